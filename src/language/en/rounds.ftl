### Sample rounds and measuring.

rounds-title = { $kind }, sample round { $number }
rounds-revision = Revision
rounds-factory = Factory
rounds-asked = Asked for
rounds-missing = Missing
rounds-out = Out of tolerance
rounds-critical-out = Critical points out
rounds-values = Measured
rounds-measured-of = { $measured } of { $count }

## Asking for a round

rounds-new-title = Ask for samples
rounds-new-bound = The factory makes these samples to revision { $revision }.
rounds-choose = Choose a factory
rounds-factory-missing = Choose the factory.
rounds-kind = What are the samples for?
rounds-kind-proto-help = The first pieces: do we understand each other?
rounds-kind-fit-help = Does it fit, and are the measurements right?
rounds-kind-size-set-help = One piece of each size: is the grading right?
rounds-kind-pre-production-help = As the order will be made: actual materials, actual line.
rounds-kind-top-of-production-help = The first pieces of the order itself.
rounds-pieces = How many pieces of each size?
rounds-count-wrong = Write a whole number from 0 to { $most }.
rounds-new-button = Ask for samples
rounds-back-to-style = Back to the style
rounds-not-shared = This style is not shared with a factory yet. Share it first.
rounds-none-current = There is no current revision. Publish one first.

## What is next

rounds-next-start = Start work on these samples.
rounds-next-start-other = Your merchandiser starts the work.
rounds-next-start-factory = { $org } starts the work next.
rounds-next-measure = { $count ->
    [one] Measure the pieces: { $count } value is missing.
   *[other] Measure the pieces: { $count } values are missing.
}
rounds-next-dispatch = Everything is measured. Send the pieces, then say so here.
rounds-next-dispatch-other = Everything is measured. Your merchandiser sends the pieces.
rounds-next-in-work = { $org } makes and measures the pieces.
rounds-next-receive = The pieces are on the way. Say when they have arrived.
rounds-next-on-the-way = The pieces are on the way. The brand says when they have arrived.
rounds-next-check = Measure the pieces, or check the factory’s values. Then say that measuring is done.
rounds-next-check-other = The brand checks the pieces.
rounds-next-decide = Decide on these samples.
rounds-next-decide-other = The brand decides next.
rounds-next-cancelled = This round was cancelled. Nothing is left to do.
rounds-next-sign = Read the decision, then sign it.
rounds-next-sign-blocked = A question is open. Settle it, then sign the decision.
rounds-next-sign-other = Not signed yet by: { $side }.
rounds-next-done = Both sides have signed. Nothing is left to do.

rounds-move-start = Start work
rounds-move-dispatch = The pieces are sent
rounds-move-receive = The pieces have arrived
rounds-move-finish-measuring = Measuring is done
rounds-measure = Measure
rounds-correct = Correct a value
rounds-sign = Go to the signatures
rounds-see-open = See what is open
rounds-unfinished = { $count ->
    [one] One value is missing.
   *[other] { $count } values are missing.
}
rounds-unfinished-what = Nobody has measured these. Measure them, or go on without them.
rounds-unfinished-piece = Piece { $number }, size { $size }
rounds-dispatch-anyway = The pieces are sent, without these values
rounds-finish-anyway = Finish anyway

## A newer revision

rounds-newer = Revision { $revision } exists.
rounds-newer-bound = These samples are made to revision { $revision }.
rounds-newer-wait = The brand says whether they go on.
rounds-newer-changes = See what changed
rounds-continue = Continue with revision { $revision }
rounds-restart = Restart with revision { $revision }
rounds-restart-sure = This round ends cancelled, and stays so. What was measured in it is kept. The same pieces are asked for again at once, with revision { $revision }.
rounds-restart-reason = Restarted with revision { $revision }.

## Pieces and points

rounds-pieces-by-points = Measurements
rounds-caption = Unit: { $unit }
rounds-pick-piece = Piece
rounds-piece = Piece { $number }
rounds-letter = Letter
rounds-point = Point of measure
rounds-spec = Spec
rounds-critical = critical
rounds-critical-line = { $count ->
    [one] { $letter } { $name } is critical, and out of tolerance on { $count } piece.
   *[other] { $letter } { $name } is critical, and out of tolerance on { $count } pieces.
}
rounds-not-yet = not yet
rounds-over = over tolerance
rounds-under = under tolerance
rounds-apart = The two sides differ too much: first agree how to measure.
rounds-legend = ▲ over tolerance, ▼ under tolerance.
rounds-legend-both = Where the brand has measured, its value counts.

## Deciding

rounds-decide = Decide
rounds-stop = Stop this round
rounds-outcome = What do you decide?
rounds-outcome-missing = Choose what you decide.
rounds-approved-help = The samples are right. No changes.
rounds-approved-with-changes-help = Right, but for the changes below. Each becomes a must-fix for the next revision.
rounds-remake-help = Make these samples again. Give the reason.
rounds-cancelled-help = End this round without a result. Give the reason.
rounds-changes = Changes
rounds-changes-help = Only for approved with changes. Take the tick away from what needs no change.
rounds-change-text = What must change at { $letter }
rounds-other-item = Another change
rounds-no-item = None
rounds-other-text = What must change there
rounds-reason = Reason
rounds-reason-help = Both sides read it. A remake or a cancelled round needs one.
rounds-decide-button = Decide
rounds-suggestion = { $pieces } Bring it within { $tolerance } { $unit }.
rounds-suggestion-piece = Piece { $piece }, size { $size }: measured { $measured }, the spec says { $spec } ({ $off }).

rounds-decided = Decision
rounds-reason-erased = (reason erased)
rounds-must-fixes = Must-fixes from this decision
rounds-another = Ask for another round

## Signing

sign-title = Signatures
sign-signed = signed
sign-not-yet = not signed yet
sign-fingerprint = Fingerprint
sign-as = I sign as { $name }, { $role }
sign-button = Sign
sign-blocked = You cannot sign yet
sign-local = { $time }, the signer's own time
sign-to-acknowledge = Acknowledge it
sign-to-thread = Open the { $kind }: { $item }

## History

rounds-history = History
rounds-did-request = { $count ->
    [one] asked for { $count } piece of revision { $revision }.
   *[other] asked for { $count } pieces of revision { $revision }.
}
rounds-did-start = started work.
rounds-did-dispatch = sent the pieces.
rounds-did-receive = received the pieces.
rounds-did-finish-measuring = said that measuring is done.
rounds-did-continue = goes on with these samples. Revision { $revision } does not change them.
rounds-did-measure = { $count ->
    [one] measured { $count } value.
   *[other] measured { $count } values.
}
rounds-did-decide = decided: { $outcome }.
rounds-did-sign = signed the decision.
rounds-did-must-fix = made a must-fix: { $letter } { $name }.

## Measuring on a phone

rounds-measure-title = Measure piece { $piece }
rounds-missing-count = { $count ->
    [0] all measured
   *[other] { $count } missing
}
rounds-back-to-round = Back to { $kind }, round { $number }
rounds-progress = Measured points of this piece
rounds-waiting = Not sent yet:
rounds-drop = Throw away
rounds-place = { $place } of { $count }
rounds-how = From { $start } to { $end }.
rounds-stretched = Stretched.
rounds-half = HALF
rounds-half-how = laid flat
rounds-full = FULL
rounds-full-how = all round
rounds-length = LENGTH
rounds-value = Measured value
rounds-save-next = Save, next
rounds-kept = This page opens again without a connection.
rounds-plain = Without HTTPS this page cannot be opened again without a connection. What you type is kept all the same.
rounds-save-anyway = It is right: save
rounds-back = Back
rounds-next = Next
rounds-skip = Skip
rounds-skip-why = Why is it not measured?
rounds-skip-later = Later: next point
rounds-skipped = Left out:
rounds-state-spec = As the spec says
rounds-state-is-spec = the spec’s numbers
rounds-measure-in = Measure:
rounds-delete = Delete
rounds-not-positive = A measurement is more than zero.
rounds-key-used = This form was sent before with another value. Look at the value once more, then save it.

rounds-ask-doubled = { $value } is about twice the spec. Is it the full way round? Measure again.
rounds-ask-halved = { $value } is about half the spec. Is it only half of the way round? Measure again.
rounds-ask-cm-as-inch = { $value } looks like centimetres. Measure again.
rounds-ask-inch-as-cm = { $value } looks like inches. Measure again.
rounds-ask-ten-times = { $value } is about ten times the spec. Look at the decimal sign.
rounds-ask-tenth = { $value } is about a tenth of the spec. Look at the decimal sign.
rounds-ask-other-size = This piece fits size { $size } better. Look at its label, and measure again.
rounds-ask-copied = Every value is the same as the spec. Were they measured, or copied?

## Sending the pieces

rounds-send-title = Send the pieces
rounds-send-materials = What are the pieces made of?
rounds-send-substitutes = Which substitutes, in place of what?
rounds-send-parcel = Courier and tracking number
rounds-send-materials-missing = Say what the pieces are made of.
rounds-materials = Materials
rounds-parcel = Sent with

## Washing

washes-title = Washing
washes-what = Change of what was measured before and after washing: (after − before) / before.
washes-rest = { $count ->
    [one] One more place changed by no more than measuring explains.
   *[other] { $count } more places changed by no more than measuring explains.
}
washes-points = { $count ->
    [one] { $count } point
   *[other] Each of { $count } points
}

## Photographs of pieces

photographs-title = Photographs of the pieces
photographs-add = Add photographs
photographs-add-button = Add
photographs-missing = Choose or take a photograph.
photographs-many = A piece has at most { $count } photographs.

## Every value side by side

readings-title = All values side by side
readings-state = State of the pieces
readings-wrong = Nothing was saved. Look at the marked values.
readings-asks = Not saved yet. Look at these again:
readings-look = Nothing is saved yet. Look at the values, then save.
readings-save = Save all
readings-empty = An emptied field keeps the value that is there.
readings-paste-title = Paste, or open a sheet
readings-paste = Values from a spreadsheet or a letter
readings-paste-help = One row for each point, begun with its letter or name. Columns of pieces have the number of the piece above them, or come in order.
readings-file = Or a file: XLSX or CSV
readings-first = Columns without a number begin with
readings-fill = Put into the fields
readings-nothing-pasted = Paste values, or choose a file.
readings-filled = { $count ->
    [one] { $count } value was put into its field.
   *[other] { $count } values were put into their fields.
}
readings-unknown = { $cell }: “{ $words }” is no point of this chart, or was there before. Its values were left out.
readings-unreadable = { $cell } holds no number that can be read: a spreadsheet may have made a date of it.
readings-no-points = No row begins with the letter or the name of a point, and { $rows } rows are not the { $points } points of the chart. Put the letters before the values.
readings-columns = { $columns } columns have values, and there are { $pieces } pieces from the chosen one on. Write the number of the piece above each column.
readings-twice = Two columns are of piece { $piece }. Leave one of them.
