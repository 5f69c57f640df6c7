### Threads, messages and questions.

## An item of a revision

item-back = रिवीज़न { $revision }
item-close = वापस
item-mark = { $letter }, { $name }
item-values = हर साइज़ का नाप { $unit } में, नीचे { $other } में
item-tolerance = टॉलरेंस
item-from = यहाँ से
item-to = यहाँ तक
item-path = फ़ीता कैसे रखें
item-relaxed = बिना खींचे
item-stretched = खींचकर
item-note = नोट
item-basis = कैसे नापा
item-key = मुख्य पॉइंट
item-critical = ज़रूरी पॉइंट
item-colours = हर रंग संयोजन में रंग
item-not-said = नहीं बताया
item-superseded = नई आ चुकी है
item-superseded-why = रिवीज़न { $revision } से सिलाई न करें।
item-newer = इसे मौजूदा रिवीज़न { $revision } में पढ़ें
item-withdrawn = वापस ली गई
item-withdrawn-why = रिवीज़न { $revision } से सिलाई न करें: { $reason }
item-current = रिवीज़न { $revision } मौजूदा है
item-removed = हटाया गया
item-removed-why = रिवीज़न { $revision } में यह अब नहीं है। इसके बारे में जो कहा गया वह यहाँ रहेगा।

## Colour patches

patch-approximate = स्क्रीन का रंग लगभग है

## Threads on an item

threads-heading = सवाल और ज़रूरी सुधार
threads-none = इस बारे में अभी किसी ने नहीं पूछा।
thread-asked-by = { $person } ने पूछा
thread-asked-by-brand = ब्रांड से { $person } ने पूछा
thread-asked-by-factory = { $factory } से { $person } ने पूछा
thread-asked-of-factory = { $person } ने { $factory } से पूछा
thread-raised-on = रिवीज़न { $revision } पर उठाया गया
thread-next-you-answer = अब आप जवाब दें।
thread-next-you-read = जवाब आ गया है। इसे बंद करें, या लिखें कि क्या बाकी है।
thread-next-you-change = अब आप इसे ड्राफ़्ट में बदलें और प्रकाशित करें।
thread-next-you-verify = अब आप इसे सैंपल पर देखें।
thread-next-answer = आगे: { $who } जवाब देगा।
thread-next-read = आगे: { $who } जवाब पढ़ेगा।
thread-next-change = आगे: { $who } इसे बदलकर रिवीज़न प्रकाशित करेगा।
thread-next-verify = आगे: { $who } इसे सैंपल पर देखेगा।
thread-text-erased = (लेख मिटाया गया)
thread-photo-erased = (फ़ोटो मिटाया गया)
thread-photo = फ़ोटो { $number }
thread-photo-taken = { $when } को लिया गया

## Writing

thread-answer = आपका संदेश
thread-send = भेजें
thread-translated = { $language }, अनुवादक: { $who }
thread-translate = इस संदेश का अनुवाद करें
thread-translate-into = भाषा
thread-translation = अनुवाद
thread-translate-help = यह आपके नाम के साथ संदेश के नीचे रहता है। मान्य मूल संदेश ही है।
thread-translate-button = संदेश के साथ रखें
thread-refused = यह नहीं भेजा गया।
thread-photos = फ़ोटो
thread-photos-help = ज़्यादा से ज़्यादा { $count }, JPEG, PNG या WebP में। जगह और भेजने वाले की जानकारी नहीं रखी जाती।
thread-draw = इस तस्वीर पर बनाएँ
thread-draw-circle = घेरा
thread-draw-arrow = तीर
thread-draw-dimension = माप रेखा
thread-draw-value = नाप
thread-draw-undo = वापस लें
thread-agree = सहमत
thread-mark-changed = रिवीज़न { $revision } में बदल गया है
thread-verify = सैंपल राउंड { $number }, { $kind } पर सही है
thread-close-question = सवाल बंद करें
thread-close-must-fix = ज़रूरी सुधार बंद करें
thread-close-suggestion = सुझाव बंद करें
thread-decline = अनुरोध नामंज़ूर करें
thread-take-back = अनुरोध वापस लें
thread-reopen = फिर से खोलें
thread-grant = छूट दें
thread-grant-final = हस्ताक्षर इस पर टिके हो सकते हैं: इसे वापस नहीं लिया जा सकता।

## Asking

ask-heading = इसके बारे में पूछें
ask-kind = यह क्या है?
ask-question-help = काम आगे बढ़ाने के लिए जवाब चाहिए।
ask-must-fix-help = इसे बदलना ही होगा। उससे पहले कोई हस्ताक्षर नहीं करेगा।
ask-suggestion-help = इसे बेहतर तरीके से किया जा सकता है।
ask-concession-help = फ़ैक्टरी चाहती है कि इसे जैसा है वैसा मान लिया जाए।
ask-factory = कौन सी फ़ैक्टरी?
ask-factory-choose = फ़ैक्टरी चुनें
ask-text = आपका संदेश
ask-send = भेजें
ask-alone = यह स्टाइल अभी किसी फ़ैक्टरी के साथ साझा नहीं है, इसलिए पूछने के लिए कोई नहीं है।
ask-alone-share = स्टाइल साझा करें

## Ready sentences

ready-title = तैयार वाक्य
ready-what = दूसरा पक्ष वाक्य अपनी भाषा में पढ़ेगा।
ready-how = एक जैसा है वैसा भेजें, या एक चुनकर जो बाकी है भरें।
ready-other = दूसरा वाक्य
ready-mark = तैयार वाक्य
ready-slot-length = नाप, { $unit }
ready-slot-spec = स्पेक का नाप, { $unit }
ready-slot-item = किस बारे में
ready-slot-other = दूसरी चीज़
ready-slot-material = मटीरियल
ready-slot-size = साइज़
ready-slot-date = तारीख़
ready-slot-until = तक
ready-slot-count = संख्या
ready-slot-percent = प्रतिशत
ready-slot-revision = रिवीज़न
ready-slot-wrong = यह यहाँ ठीक नहीं है। फिर से लिखें या चुनें।

## Live pages

live-new = इस पेज पर कुछ नया है।
live-show = दिखाएँ
live-lost = कनेक्शन नहीं है। यह पेज पुराना हो सकता है। फिर कोशिश हो रही है।
live-unsent = कनेक्शन नहीं है: नहीं भेजा गया। फिर से भेजें।
