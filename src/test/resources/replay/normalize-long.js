// expect THROWN 2
"\u0344".repeat(1e5).normalize("NFKD");
