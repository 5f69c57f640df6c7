### The list of styles and one style.
