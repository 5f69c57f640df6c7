### What belongs together in the document, as the trade says it.

group-told = { $what }: { $value }
group-named = { $name } { $value }
group-unsaid = (नहीं बताया)
group-percent = { $percent } % { $of }
group-also-called = { $fibre } ({ $name })
group-way = { $line } से इसके { $anchor } तक
group-across = { $width } × { $height }
group-from-to = { $from } से { $to }
