### What the program's own values are called.

## Sections of a spec

section-header = हेडर
section-sizes = साइज़
section-drawings = ड्रॉइंग
section-points = नाप के पॉइंट
section-colourways = पार्ट और रंग संयोजन
section-materials = मटीरियल
section-construction = सिलाई
section-artwork = आर्टवर्क
section-labels = लेबल और देखभाल
section-packing = पैकिंग

## Who wears it


## Where it is sold


## The state of the garment that the numbers hold for

measured-as-sewn = सिलाई के बाद जैसा है
measured-after-finish = गारमेंट फ़िनिश के बाद
measured-after-washes = { $count ->
    [one] { $count } बार धोने के बाद
   *[other] { $count } बार धोने के बाद
}

## Units

unit-cm = cm
unit-mm = mm
unit-inch = इंच

## Drawings


## Points of measure


## Readiness

severity-error = ग़लती
severity-warning = चेतावनी

## Who takes part

side-brand = ब्रांड
side-factory = फ़ैक्टरी
role-owner = मालिक
role-designer = डिज़ाइनर
role-viewer = दर्शक
role-merchandiser = मर्चेंडाइज़र
role-sample-room = सैंपल रूम
role-inspector = जाँचकर्ता

## Revisions

standing-current = मौजूदा
standing-superseded = नई आ चुकी है
standing-withdrawn = वापस ली गई
agreement-shared = साझा
agreement-acknowledged = पावती मिली
agreement-signed-by-factory = फ़ैक्टरी ने हस्ताक्षर किए
agreement-signed-by-brand = ब्रांड ने हस्ताक्षर किए
agreement-signed-by-both = दोनों ने हस्ताक्षर किए

## Threads

thread-kind-question = सवाल
thread-kind-must-fix = ज़रूरी सुधार
thread-kind-suggestion = सुझाव
thread-kind-concession = छूट का अनुरोध
thread-state-open = खुला
thread-state-answered = जवाब मिला
thread-state-agreed = सहमति हुई
thread-state-changed = रिवीज़न { $revision } में बदला गया
thread-state-verified = रिवीज़न { $revision } के सैंपल पर जाँचा गया
thread-state-closed = बंद
thread-state-granted = छूट दी गई

## Sample rounds

round-kind-proto = प्रोटो
round-kind-fit = फ़िट
round-kind-size-set = साइज़ सेट
round-kind-pre-production = प्री-प्रोडक्शन (PP)
round-kind-top-of-production = टॉप ऑफ़ प्रोडक्शन (TOP)
round-state-requested = माँगा गया
round-state-in-work = काम चल रहा है
round-state-dispatched = भेजा गया
round-state-received = मिल गया
round-state-measured = नापा गया
round-materials-actual = स्पेक की सामग्री
round-materials-substitute = बदली हुई सामग्री
round-outcome-approved = मंज़ूर
round-outcome-approved-with-changes = बदलाव के साथ मंज़ूर
round-outcome-remake = फिर से बनाएँ
round-outcome-cancelled = रद्द
wash-before = धुलाई से पहले
wash-after = धुलाई के बाद
skip-absent = इस पीस में यह नहीं है
skip-unfinished = अभी सिला नहीं है
skip-damaged = पीस यहाँ खराब है
skip-unclear = समझ नहीं आया कैसे नापें

## Bulk inspections

inspection-critical = क्रिटिकल
inspection-major = मेजर
inspection-minor = माइनर
inspection-open = जारी
inspection-accepted = स्वीकार
inspection-rejected = अस्वीकार
inspection-released = भेजने की मंज़ूरी
inspection-concession = छूट के साथ पास
inspection-rework = सुधार के लिए वापस
inspection-refused = नहीं लिया गया

## Acts in the ledger

act-create = स्टाइल शुरू
act-publish = रिवीज़न प्रकाशित
act-withdraw = रिवीज़न वापस
act-share = फ़ैक्टरी के साथ साझा
act-unshare = फ़ैक्टरी के साथ साझा बंद
act-acknowledge = रिवीज़न की पावती
act-ask = चर्चा शुरू
act-message = संदेश भेजा
act-thread-move = चर्चा आगे बढ़ी
act-request-round = सैंपल राउंड माँगा
act-round-move = सैंपल राउंड आगे बढ़ा
act-measure = नाप लिया
act-skip = छोड़ा गया बिंदु
act-photograph = पीस की तस्वीर
act-decide = सैंपल राउंड पर फ़ैसला
act-submit = नमूना दिया गया
act-approve = नमूने पर फ़ैसला
act-seal = सैंपल सील
act-begin-inspection = बल्क जाँच शुरू
act-inspect = पीस जाँचा
act-conclude-inspection = बल्क जाँच का निष्कर्ष
act-decide-inspection = लॉट पर फ़ैसला
act-sign = हस्ताक्षर
act-translate = अनुवाद
act-translate-message = संदेश का अनुवाद
act-erase = निजी लेख मिटाया
