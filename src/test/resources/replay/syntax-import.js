// expect SYNTAX 2
import x from "y";
