// expect SYNTAX 3
const a = {
