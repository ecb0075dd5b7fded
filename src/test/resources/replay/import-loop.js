// expect TIME 3
say(1);
import('data:text/javascript,for(;;);');
