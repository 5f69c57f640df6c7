### Who did what when.

ledger-title = Ledger
ledger-what = Everything that was done with this style. Nothing here is ever changed or removed: each entry carries the hash of the one before.
ledger-part = You see the entries that concern your factory; the numbers of the others are left out.
ledger-length = Entries
ledger-end = Hash of the last one
ledger-with = With { $factory }
ledger-brand-only = For the brand only
ledger-program = The program
ledger-each = Every value
ledger-none = Nothing was done yet.

## What was done

deed-create = { $who } started the style.
deed-publish = { $who } published revision { $revision }.
deed-withdraw = { $who } withdrew revision { $revision }.
deed-share = { $who } shared the style with { $factory }.
deed-unshare = { $who } ended the share with { $factory }.
deed-acknowledge = { $who } acknowledged revision { $revision }.
deed-ask = { $who } raised a { $kind } on { $item }, revision { $revision }.
deed-message = { $photos ->
    [0] { $who } wrote in the { $kind } on { $item }.
    [one] { $who } wrote in the { $kind } on { $item }, with a photograph.
   *[other] { $who } wrote in the { $kind } on { $item }, with { $photos } photographs.
}
deed-thread = { $move ->
    [agree] { $who } agreed to the { $kind } on { $item }.
    [reopen] { $who } opened the { $kind } on { $item } again.
    [grant] { $who } let the { $kind } on { $item } pass.
    [verify] { $who } saw on a sample that the { $kind } on { $item } is mended.
   *[close] { $who } closed the { $kind } on { $item }.
}
deed-thread-changed = { $who } carried the { $kind } on { $item } into revision { $revision }.
deed-round = round { $number } ({ $kind })
deed-round-request = { $count ->
    [one] { $who } asked for { $round }: 1 piece, made to revision { $revision }.
   *[other] { $who } asked for { $round }: { $count } pieces, made to revision { $revision }.
}
deed-round-start = { $who } started { $round }.
deed-round-dispatch = { $who } sent the pieces of { $round }.
deed-round-receive = { $who } received the pieces of { $round }.
deed-round-measured = { $who } finished measuring { $round }.
deed-round-continue = { $who } went on with { $round } although revision { $revision } exists.
deed-measure = { $who } measured { $value } at { $item }, piece { $piece } of { $round }.
deed-measure-many = { $count ->
    [one] { $who } measured 1 value in { $round }.
   *[other] { $who } measured { $count } values in { $round }.
}
deed-skip = { $who } left out { $item }, piece { $piece } of { $round }: { $reason }.
deed-photograph = { $who } added a photograph of piece { $piece } of { $round }.
deed-decide = { $who } decided { $round }: { $outcome }.
deed-submit = { $who } submitted option { $option } of { $item } ({ $kind }).
deed-approve = { $verdict ->
    [approved] { $who } approved option { $option } of { $item } ({ $kind }).
   *[rejected] { $who } rejected option { $option } of { $item } ({ $kind }).
}
deed-seal = { $who } sealed pieces of { $round }: { $count }.
deed-inspection-begin = { $who } began bulk inspection { $number }. Pieces in the lot: { $count }.
deed-inspect = { $who } inspected piece { $piece } in bulk inspection { $number }.
deed-inspect-many = { $who } inspected pieces in bulk inspection { $number }: { $count }.
deed-inspection-conclude = { $who } concluded bulk inspection { $number }: { $outcome }.
deed-inspection-decide = { $who } decided on bulk inspection { $number }: { $decision }.
deed-sign-revision = { $who } signed revision { $revision }.
deed-sign-round = { $who } signed { $round }.
deed-sign-seal = { $who } signed the seal of { $round }.
deed-translate = { $count ->
    [one] { $who } translated one text into { $language }.
   *[other] { $who } translated { $count } texts into { $language }.
}
deed-translate-message = { $who } put a translation into { $language } beside a message in the { $kind } on { $item }.
deed-erase = Somebody's name, messages and photographs were erased. Their hashes stay.
