// expect THROWN 2
import("fs");
