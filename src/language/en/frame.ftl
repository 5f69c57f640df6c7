### What stands around every page: title, navigation, footer.
