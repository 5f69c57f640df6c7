### What stands around every page: title, navigation, footer.

frame-skip = Skip to the page
frame-nav = Main
frame-sign-out = Sign out
frame-foot = { $brand } runs on Fellseam.
