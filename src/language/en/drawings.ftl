### Drawings of a draft, with their letters.

drawings-none = There is no drawing yet. Add one below.
drawings-hint = Drag a letter from above a drawing to where it belongs. Drag it back to take it off. With the keyboard: arrows move a letter, with Shift further, Delete takes it off.
drawings-tray = Letters that are not on this drawing
drawings-original = Original file
drawings-view = View
drawings-title = Title
drawings-replace = Another picture in its place
drawings-replace-help = The letters stay where they are.
drawings-remove = Remove this drawing
drawings-letters = Letters in numbers
drawings-letters-help = In percent of the drawing, from the left and from the top. Empty: not on this drawing.
drawings-no-letters = There are no points of measure and no parts yet.
drawings-letter = Letter
drawings-x = From the left, %
drawings-y = From the top, %
drawings-add = Add drawings
drawings-add-help = SVG, PNG, JPEG or WebP, several at once. They are added when you save.
drawings-told = Look at this
drawings-refused = Not every file was taken. The rest is saved.
drawings-refused-file = “{ $name }” was not taken. { $why }
drawings-files-again = Choose your files again: they were not taken.
drawings-live-text = The SVG holds text, which is drawn with another font here. Turn text into outlines to be sure.
drawings-text-lost = The SVG holds text that cannot be shown here. Turn it into outlines, and upload the file again.
drawings-linked = The SVG names pictures in other files. They are not shown.
drawings-embedded = The SVG holds pictures. They are not shown: upload them as files of their own.
error-percent = Write a number from 0 to 100 in both fields, or leave both empty.
