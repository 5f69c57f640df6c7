### What a style may begin with.

starts-title = Begin with
starts-what = A start fills every section, so that you change rather than invent. Its sizes, measures, grades and tolerances are common practice, without a source: check each before you publish.
starts-nothing = Nothing
starts-keep = Keep as a start
starts-keep-no-more = No longer a start
starts-is-one = New styles can begin with the draft of this one.
