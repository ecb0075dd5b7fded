// expect UNKNOWN_NAME 2
new Date();
