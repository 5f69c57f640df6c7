### Threads, messages and questions.

## An item of a revision

item-back = Revision { $revision }
item-close = Back
item-mark = { $letter }, { $name }
item-values = The value of every size in { $unit }, and below it in { $other }
item-tolerance = Tolerance
item-from = From
item-to = To
item-path = How the tape lies
item-relaxed = relaxed
item-stretched = stretched
item-note = Note
item-basis = Measured
item-key = key point
item-critical = critical point
item-colours = The colour in every colourway
item-not-said = not said
item-superseded = Superseded
item-superseded-why = Do not sew from revision { $revision }.
item-newer = Read this in revision { $revision }, the current one
item-withdrawn = Withdrawn
item-withdrawn-why = Do not sew from revision { $revision }: { $reason }
item-current = Revision { $revision } is current
item-removed = Removed
item-removed-why = Revision { $revision } has this no more. What was said about it stays here.

## Colour patches

patch-approximate = screen colour approximate

## Threads on an item

threads-heading = Questions and must-fixes
threads-none = Nobody has asked about this yet.
thread-asked-by = Asked by { $person }
thread-asked-by-brand = Asked by { $person }, the brand
thread-asked-by-factory = Asked by { $person }, { $factory }
thread-asked-of-factory = Asked by { $person }, with { $factory }
thread-raised-on = raised on revision { $revision }
thread-next-you-answer = You answer next.
thread-next-you-read = There is an answer. Close this, or write what is still open.
thread-next-you-change = You change it in the draft next, and publish.
thread-next-you-verify = You look at it on a sample next.
thread-next-answer = Next: { $who } answers.
thread-next-read = Next: { $who } reads the answer.
thread-next-change = Next: { $who } changes it and publishes a revision.
thread-next-verify = Next: { $who } looks at it on a sample.
thread-text-erased = (text erased)
thread-photo-erased = (photograph erased)
thread-photo = Photograph { $number }
thread-photo-taken = taken { $when }

## Writing

thread-answer = Your message
thread-send = Send
thread-translated = { $language }, translated by { $who }
thread-translate = Translate this message
thread-translate-into = Language
thread-translation = Translation
thread-translate-help = It stands below the message with your name. What counts is the message itself.
thread-translate-button = Put it beside the message
thread-refused = This was not sent.
thread-photos = Photographs
thread-photos-help = Up to { $count }, as JPEG, PNG or WebP. Place and sender are not kept.
thread-draw = Draw on this photograph
thread-draw-circle = Circle
thread-draw-arrow = Arrow
thread-draw-dimension = Dimension
thread-draw-value = Value
thread-draw-undo = Take back
thread-agree = Agree
thread-mark-changed = It is changed in revision { $revision }
thread-verify = It is right on sample round { $number }, { $kind }
thread-close-question = Close the question
thread-close-must-fix = Close the must-fix
thread-close-suggestion = Close the suggestion
thread-decline = Decline the request
thread-take-back = Take the request back
thread-reopen = Open again
thread-grant = Let it pass
thread-grant-final = Signatures may rest on this: it cannot be taken back.

## Asking

ask-heading = Ask about this
ask-kind = What is it?
ask-question-help = An answer is needed before work can go on.
ask-must-fix-help = It must change. Nobody signs before it does.
ask-suggestion-help = It could be done in a better way.
ask-concession-help = The factory asks to let something pass as it is.
ask-factory = Which factory?
ask-factory-choose = Choose a factory
ask-text = Your message
ask-send = Send
ask-alone = This style is shared with no factory yet, so there is nobody to ask.
ask-alone-share = Share the style

## Ready sentences

ready-title = Ready sentences
ready-what = The other side reads the sentence in its own language.
ready-how = Send one as it stands, or choose one and fill in what is missing.
ready-other = Another sentence
ready-mark = ready sentence
ready-slot-length = Measurement, { $unit }
ready-slot-spec = What the spec says, { $unit }
ready-slot-item = What it is about
ready-slot-other = And what else
ready-slot-material = Material
ready-slot-size = Size
ready-slot-date = Date
ready-slot-until = Until
ready-slot-count = Number
ready-slot-percent = Percent
ready-slot-revision = Revision
ready-slot-wrong = This does not fit here. Write or choose it again.

## Live pages

live-new = There is something new on this page.
live-show = Show it
live-lost = No connection. This page may be old. Trying again.
live-unsent = No connection: this was not sent. Send it once more.
