### What belongs together in the document, as the trade says it.

group-told = { $what }: { $value }
group-named = { $name } { $value }
group-unsaid = (belirtilmemiş)
group-percent = % { $percent } { $of }
group-also-called = { $fibre } ({ $name })
group-way = başlangıç { $line }, bitiş: { $anchor }
group-across = { $width } × { $height }
group-from-to = { $from } – { $to }
