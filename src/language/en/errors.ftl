### What went wrong, and the way out.
