### What belongs together in the document, as the trade says it.

group-told = { $what }: { $value }
group-named = { $name } { $value }
group-unsaid = (chưa nêu)
group-percent = { $percent } % { $of }
group-also-called = { $fibre } ({ $name })
group-way = từ { $line } đến { $anchor } của nó
group-across = { $width } × { $height }
group-from-to = { $from } đến { $to }
