### Reading, comparing and sharing a published revision.

## What a signature is put to

statement-revision-factory = मैंने यह रिवीज़न पढ़ा है। मेरी फ़ैक्टरी स्टाइल इसी के अनुसार बनाएगी।
statement-revision-brand = यह रिवीज़न ही हमारी माँग है। जो माल आएगा उसे हम इसी से परखेंगे।
statement-round-factory = मैंने इस सैंपल राउंड का फ़ैसला पढ़ा है। मेरी फ़ैक्टरी इसी के अनुसार काम करेगी।
statement-round-brand = इस सैंपल राउंड पर यह हमारा फ़ैसला है।
statement-seal-factory = यहाँ लिखे पीस सील हैं। मेरी फ़ैक्टरी बल्क इनके और रिवीज़न के अनुसार बनाएगी।
statement-seal-brand = यहाँ लिखे पीस सील हैं। हम बल्क को इनसे और रिवीज़न से परखेंगे।

## A revision

revision-number = रिवीज़न { $revision }
revision-reason = क्यों प्रकाशित हुआ

## What changed

changes-title = रिवीज़न { $revision } में क्या बदला
changes-since = रिवीज़न { $revision } से तुलना।
changes-acknowledged = आपकी फ़ैक्टरी ने आख़िरी बार इसी की पावती दी है।
changes-none = रिवीज़न { $revision } के बाद कुछ नहीं बदला।
changes-first = यह पहला रिवीज़न है। तुलना के लिए इससे पहले कुछ नहीं है।
changes-compare = दूसरे रिवीज़न से तुलना करें
changes-with = रिवीज़न { $revision } से
changes-read = रिवीज़न { $revision } पढ़ें

## The revision page

revision-what-changed = क्या बदला
revision-to-signatures = हस्ताक्षर
revision-current = रिवीज़न { $revision } मौजूदा है
revision-published = { $date } को { $name } ने प्रकाशित किया
revision-superseded = नई आ चुकी है
revision-superseded-stop = इससे सिलाई न करें।
revision-withdrawn = वापस ली गई
revision-withdrawn-why = रुकें। इससे सिलाई न करें: { $reason }
revision-use = रिवीज़न { $revision } इस्तेमाल करें
revision-see-changes = देखें कि क्या बदला
revision-none-current = कोई रिवीज़न मौजूदा नहीं है। ब्रांड के नया प्रकाशित करने तक रुकें।
revision-original = मूल फ़ाइल
revision-tap = पढ़ने या पूछने के लिए कोई अक्षर चुनें। ? यानी खुला सवाल, ! यानी खुला ज़रूरी सुधार।
revision-style = स्टाइल
revision-revision = रिवीज़न
revision-fingerprint = फ़िंगरप्रिंट
revision-date = प्रकाशन तिथि
revision-by = प्रकाशित किया
revision-state = स्थिति
revision-compare = तुलना
revision-measured = { $state } · सपाट और बिना खींचे · { $edges }। किसी पॉइंट पर अलग लिखा हो सकता है।
revision-contents = इस पेज पर
revision-others = दूसरे रिवीज़न और डाउनलोड
revision-archive = पूरा रिवीज़न डाउनलोड करें (ZIP)
revision-archive-what = इसका दस्तावेज़ और इसमें दिखाई गई मूल फ़ाइलें, हूबहू।
revision-document = इस रिवीज़न का दस्तावेज़ डाउनलोड करें (JSON)
revision-document-what = ठीक वही बाइट जिनसे फ़िंगरप्रिंट बना है।

## Acknowledging

acknowledge-not-yet = आपकी फ़ैक्टरी ने रिवीज़न { $revision } की पावती नहीं दी है।
acknowledge-changed = आपकी फ़ैक्टरी ने आख़िरी बार जिस रिवीज़न { $revision } की पावती दी, उसके बाद { $count } बदलाव।
acknowledge-what = पावती देने का मतलब है: हमने यह रिवीज़न पढ़ा है और केवल इसी से काम करते हैं।
acknowledge-button = रिवीज़न { $revision } की पावती दें
acknowledge-others = अपने मर्चेंडाइज़र से पावती देने को कहें।

## The size chart

chart-title = साइज़ चार्ट
chart-caption = साइज़ चार्ट, { $unit }
chart-units = सभी नाप { $unit } में हैं। छोटे अंक { $other } में हैं, केवल संदर्भ के लिए।
chart-changed = रेखांकित नाप आपकी फ़ैक्टरी की आख़िरी पावती वाले रिवीज़न { $revision } के बाद बदले हैं; पुराना नाप काटा हुआ है।
chart-size = साइज़
chart-point = नाप का पॉइंट
chart-base = बेस
chart-tolerance = टॉलरेंस

## How to measure

how-title = कैसे नापें
how-from = यहाँ से
how-to = यहाँ तक
how-way = तरीका
how-relaxed = बिना खींचे
how-stretched = खींचकर

## Parts and colourways

parts-approximate = स्क्रीन के रंग लगभग हैं। रेफ़रेंस ही मान्य है।
parts-colourway = रंग संयोजन
parts-part = पार्ट

## Words beside a name

about-must-fix = { $count } ज़रूरी सुधार
about-open = { $count } खुले
about-new = नया
about-changed = बदला

## Warnings that were accepted

accepted-title = ब्रांड ने जो चेतावनियाँ मान लीं
accepted-reason = कारण:

## Signing

sign-not-shared = यह स्टाइल अभी किसी फ़ैक्टरी के साथ साझा नहीं है।
sign-acknowledged = पावती { $time } UTC
