### Why an act is refused, and the way on.

## Publishing and withdrawing

refused-section-moved = { $count ->
    [one] One section was
   *[other] { $count } sections were
} saved by somebody else after you opened this page. Read what is new below, then publish.
refused-errors-remain = { $count ->
    [one] One error is
   *[other] { $count } errors are
} left. Correct what is listed below, then publish.
refused-warning-reason-missing = { $count ->
    [one] One warning has
   *[other] { $count } warnings have
} no reason. Correct it, or write why it stays as it is. The reason is printed in the revision.
refused-reason-missing = Write a reason. Others will read it later.
refused-draft-unchanged = The draft is the same as revision { $revision }. Change something first.
refused-must-fix-unchanged = { $count ->
    [one] One agreed must-fix is
   *[other] { $count } agreed must-fixes are
} not changed in the draft. Change the item, let the must-fix pass, or close it.
refused-already-withdrawn = This revision is withdrawn already.
refused-not-current = This is not the current revision. Revision { $revision } is. Read what changed there.
refused-none-current = This is not the current revision, and there is no current one: the newest was withdrawn. Wait for the brand to publish a new one.
refused-not-shared = This style is not shared with the factory now. The brand can share it again.
refused-already-acknowledged = Your factory has acknowledged this revision already.

## Whose move it is

refused-only-brand = Only the brand may do this.
refused-only-factory = Only the factory may do this.
refused-not-the-asker = Only the person who asked may do this, or somebody who leads their organisation.
refused-only-brand-closes = Only the brand may close this. It is a thread of the kind: { $kind }.
refused-other-side-first = The other side has not answered yet. Wait for the answer.

## Threads

refused-thread-not-in = This cannot be done now. The thread is: { $state }.
refused-thread-closed = This thread is closed. Open it again, or ask a new question.
refused-no-such-move = This cannot be done with a thread of the kind: { $kind }.
refused-item-unchanged = Revision { $revision } does not change this item. Change it in the draft and publish first.
refused-sample-too-old = The sample was made before revision { $revision }. Measure a sample of that revision or a later one.

## Rounds

refused-round-not-in = This cannot be done now. The round is: { $state }.
refused-nothing-measured = Nothing was measured yet. Measure at least one piece first.
refused-only-corrections = The round is decided. A value can only be corrected now, not added.
refused-pieces-missing = Say how many pieces of which size: at least one piece, no more than { $most }, and only sizes of this revision.
refused-substitutes-missing = Say which materials stand in the place of which.
refused-changes-missing = Say what must change: at least one item, with words.
refused-critical-out = { $count ->
    [one] One critical point is
   *[other] { $count } critical points are
} out of tolerance. Ask for a remake, name them as changes, or grant a concession.
refused-newer-revision-needed = The last round was approved with changes. Publish a revision after revision { $revision } first, with these changes in it.
refused-no-newer-revision = There is no newer revision.
refused-nothing-to-approve = This revision needs no approval of this. See the list of what it needs.
refused-photo-missing = Add a photograph: an option is judged from one at least.
refused-option-decided = This option is decided already: { $verdict }. Another option gets another decision.
refused-only-owner = Only an owner of the brand seals a sample.
refused-already-sealed = Pieces of this round are sealed already.
refused-too-early-to-seal = This is a round of the kind: { $kind }. A sample is sealed from a pre-production or a top-of-production round.
refused-round-not-approved = This round is: { $state }. A sample is sealed from an approved round.
refused-questions-before-sealing = Questions are open: { $count }. Answer them; the asker closes them.
refused-must-fix-unverified = Must-fixes that nobody has seen mended on a sample: { $count }. Verify them on a sample, or let them pass.
refused-size-set-missing = No size set with these sizes and this chart is approved with this factory.
refused-not-approved-yet = Not approved yet: { $count }.
refused-substitutes-sent = The pieces are made of substitute materials. A sealed sample is made of those of the spec.
refused-piece-critical-out = Critical points out of tolerance, or not measured, on a piece to be kept: { $count }. Measure them, grant a concession, or seal another piece.
refused-seal-unsaid = Choose at least one piece. Give each a seal number of its own, and say where it is kept.
refused-seal-unsigned = Bulk is inspected against a seal that both sides have signed. Not signed yet by: { $sides }.
refused-lot-unsaid = Say how many pieces of which colourway and size the lot has: at least one, no more than { $most } in all, and only those of this revision.
refused-not-for-rework = The brand has not sent that lot back to be mended. Only such a lot is inspected again.
refused-inspected-again = That lot is inspected again already.
refused-lot-grown = A mended lot has no more pieces of any colourway and size than before.
refused-inspection-not-in = This cannot be done now. The inspection is: { $state }.
refused-piece-unsaid = Say which piece: a number from 1 to { $most }, and no more of one colourway and size than the lot has.
refused-piece-beyond = The sample has { $sample } pieces. A piece beyond it is entered only for a critical defect.
refused-piece-moved = Somebody entered this piece after you opened the page. Read it, then save yours again if it is to count.
refused-defect-unsaid = Say where the defect is, or what it is in words.
refused-pieces-uninspected = Pieces of the sample that are not inspected yet: { $count }. Inspect them first.
refused-lot-rejected = The lot is rejected and cannot be released. Let it pass with a concession, send it back, or refuse it.
refused-nothing-to-concede = The lot is accepted: there is nothing to let pass. Release it, send it back, or refuse it.
refused-critical-in-bulk = Pieces with a critical defect: { $count }. Such a lot is only sent back or refused.

## Signing

refused-open-questions = { $count ->
    [one] One question is open. Answer it; the asker closes it.
   *[other] { $count } questions are open. Answer them; the asker closes them.
} Then sign.
refused-must-fix-open = { $count ->
    [one] One must-fix is
   *[other] { $count } must-fixes are
} not changed in this revision and not let pass. The brand must change it and publish, or let it pass.
refused-same-person-both-sides = You have signed for the other side of this style. One person never signs for both sides: somebody else must sign.
refused-already-signed = Your side has signed this already.
refused-not-acknowledged = Acknowledge this revision first, then sign it.
refused-nothing-decided = There is no decision to sign yet. The brand must decide the round first.
refused-role-does-not-sign = Your role does not sign. Ask somebody in your organisation who may.
refused-screen-moved = This changed after you opened the page. Read it again, then sign.
