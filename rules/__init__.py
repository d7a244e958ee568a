"""The rules: one module each, grouped by area; the folder is the list."""
