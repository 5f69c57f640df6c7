### The brand's own translations of what a spec says.

translations-title = Translations
translations-what = What you wrote stays as it is and always rules. Beside it, readers of other languages see the program’s word of the trade (≈) or your own translation (=), which comes first. A revision keeps what it was published with; what you write here later is shown beside it, with its day.
translations-into = Into which language
translations-done = { $done } of { $count } texts have a translation of your own.
translations-none = The draft has no words yet.
translations-where = Where
translations-words = What you wrote
translations-term = The program’s word
translations-moved = Somebody wrote “{ $text }” here in the meantime. Save again to put yours in its place.
translations-save = Save translations
