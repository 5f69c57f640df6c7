### Ready sentences that both sides read in their own language: phrase-<id> of exchange/phrase.rs.

phrase-group-question = Questions
phrase-group-answer = Answers
phrase-group-fix = What must change
phrase-group-measuring = Measuring
phrase-group-material = Materials
phrase-group-date = Dates
phrase-group-shipping = Shipping

## Questions

phrase-ask-how-measured = How is { $item } measured? Please show where it begins and ends.
phrase-ask-which-right = { $item }: the drawing and the text differ. Which one is right?
phrase-ask-photo = Please send a photo of { $item }.
phrase-ask-larger-drawing = Please send a larger drawing of { $item }.
phrase-ask-value = The value of { $item } in size { $size } is not clear. What is it?
phrase-ask-stitch = Which stitch type is right for { $item }?
phrase-ask-allowance = How much seam allowance does { $item } need?
phrase-ask-place = Where exactly does { $item } go? From which seam is it measured?
phrase-ask-colour = Which colour reference is right for { $item }?
phrase-ask-revision = Shall we work to revision { $revision }?
phrase-ask-order = May we sew { $item } before { $other }?
phrase-ask-sample = Please send a sample of { $item }.

## Answers

phrase-answer-yes = Yes.
phrase-answer-no = No.
phrase-answer-spec = The spec is right. Please work to it.
phrase-answer-drawing = The drawing is right. The text will be changed.
phrase-answer-text = The text is right. The drawing will be changed.
phrase-answer-value = { $item }, size { $size }: the right value is { $value }.
phrase-answer-next = It will be changed in the next revision. Please wait for it.
phrase-answer-changed = It is changed in revision { $revision }.
phrase-answer-go-on = Please go on. This does not stop the work.
phrase-answer-stop = Please stop the work on { $item } until this is settled.
phrase-answer-understood = Understood. We will do it so.
phrase-answer-allowance = Use { $value } seam allowance at { $item }.
phrase-answer-distance = Place { $item } at a distance of { $value } from { $other }.

## What must change

phrase-fix-large = { $item } is too large by { $value }. Bring it to the spec.
phrase-fix-small = { $item } is too small by { $value }. Bring it to the spec.
phrase-fix-density = { $item }: sew { $count } stitches per cm.
phrase-fix-twisted = The seam at { $item } is twisted. Sew it flat.
phrase-fix-puckers = The seam at { $item } puckers. Check the thread tension.
phrase-fix-skipped = Stitches are skipped at { $item }.
phrase-fix-ends = Trim the thread ends at { $item }.
phrase-fix-bartack = A bartack is missing at { $item }.
phrase-fix-place = { $item } is in the wrong place. Move it by { $value }.
phrase-fix-turned = { $item } is sewn the wrong way round.
phrase-fix-sides = Left and right differ by { $value } at { $item }. Make them equal.
phrase-fix-colour = The colour of { $item } is not the approved one.
phrase-fix-print = The print at { $item } cracks or peels.
phrase-fix-stain = There are stains at { $item }. Keep the pieces clean.
phrase-fix-label = The text on { $item } is wrong. Use the text of the spec.

## Measuring

phrase-measured-says = { $item }: measured { $value }, the spec says { $spec }.
phrase-measured-size = { $item }, size { $size }: measured { $value }.
phrase-measured-shrinks = { $item } shrinks by { $percent } % in washing.
phrase-measured-grows = { $item } grows by { $percent } % in washing.
phrase-measure-again = Please measure { $item } again, laid flat and not stretched.
phrase-measured-half = { $item } was measured flat: half of the way round.
phrase-measured-stretched = { $item }, stretched: measured { $value }.
phrase-measured-allowance = The pattern needs { $value } more seam allowance at { $item }.
phrase-measured-tolerance = The tolerance of { $item } cannot be held. We can hold { $value }.
phrase-measured-vary = The pieces differ among themselves by { $value } at { $item }.

## Materials

phrase-material-instead = Can we use { $material } instead of { $other }?
phrase-material-none = { $material } is not available.
phrase-material-arrives = { $material } arrives on { $date }.
phrase-material-shade = The shade of { $material } differs from the approved lab dip.
phrase-material-dip-sent = The lab dip of { $material } was sent on { $date }.
phrase-material-dip-approve = Please approve the lab dip of { $material }.
phrase-material-minimum = The minimum order of { $material } is more than we need.
phrase-material-width = The width of { $material } is { $value }.
phrase-material-shrinks = { $material } shrinks by { $percent } %.
phrase-material-keep = No. Use { $material } as the spec says.
phrase-material-take = Yes. You may use { $material }.
phrase-material-short = { $material }: { $count } pieces are missing.

## Dates

phrase-date-ready = The samples are ready on { $date }.
phrase-date-late = We are { $count } days late.
phrase-date-need = We need the samples by { $date }.
phrase-date-answer = Please answer by { $date }. After that the work stops.
phrase-date-cutting = Cutting begins on { $date }.
phrase-date-sewn = Sewing is finished on { $date }.
phrase-date-closed = The factory is closed from { $date } to { $until }.
phrase-date-confirm = Please confirm this date: { $date }.

## Shipping

phrase-ship-sent = { $count } pieces were sent on { $date }.
phrase-ship-arrived = { $count } pieces arrived on { $date }.
phrase-ship-cartons = Number of cartons: { $count }.
phrase-ship-missing = { $count } pieces are missing in the parcel.
phrase-ship-damaged = The parcel arrived damaged.
phrase-ship-address = Please confirm the address for the parcel.
phrase-ship-papers = Please send the papers for customs.
