// expect THROWN 2
"İ".repeat(1e5).toLowerCase();
