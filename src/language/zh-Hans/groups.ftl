### What belongs together in the document, as the trade says it.

group-told = { $what }：{ $value }
group-named = { $name } { $value }
group-unsaid = （未说明）
group-percent = { $percent } % { $of }
group-also-called = { $fibre }（{ $name }）
group-way = 从 { $line } 到其{ $anchor }
group-across = { $width } × { $height }
group-from-to = { $from } 至 { $to }
