### What belongs together in the document, as the trade says it.

group-told = { $what }: { $value }
group-named = { $name } { $value }
group-unsaid = (বলা নেই)
group-percent = { $percent } % { $of }
group-also-called = { $fibre } ({ $name })
group-way = { $line } থেকে এর { $anchor } পর্যন্ত
group-across = { $width } × { $height }
group-from-to = { $from } থেকে { $to }
