### What a revision says, section by section.

## The program's words beside the brand's

term-legend = ≈ आपकी भाषा में प्रोग्राम का शब्द है, मातृभाषी ने नहीं जाँचा। ब्रांड ने जो लिखा वही मान्य है। = के बाद ब्रांड का अपना अनुवाद है।
later-title = यह संस्करण प्रकाशित होने के बाद फिर से अनुवादित। मूल पाठ वही है।

## Drawings

drawing-larger = बड़ा: { $drawing }
legend-point = नाप का पॉइंट
legend-part = पार्ट
legend-callout = सिलाई कैसे होगी
legend-artwork = आर्टवर्क
legend-label = लेबल
legend-larger = उस नंबर की ड्रॉइंग पर बड़ा
legend-dimension = पॉइंट जो नापता है

## A rule that an owner sets aside

exemption-title = यहाँ एक नियम लागू नहीं है: { $code }
exemption-reason = कारण: { $reason }
exemption-by = किसने कहा: { $name }

## Sizes

lengths-caption = लंबाई, { $unit }
sizes-ages = उम्र
sizes-years = { $from } से { $to } साल
sizes-months = { $from } से { $to } महीने
sizes-range = { $from } से { $to } { $unit }
sizes-single = { $value } { $unit }

## Colourways

parts-planned = { $count } पीस की योजना
parts-as-dyed = रंगने के बाद

## Materials

materials-material = मटीरियल
materials-what = यह क्या है
materials-where = कहाँ लगता है
materials-length = लंबाई और खपत
materials-supply = सप्लाई
materials-care = ज़्यादा से ज़्यादा सहता है
materials-parts = किसका रंग

## Construction

construction-callout = क्या सिलना है
construction-larger = बड़ा
construction-stitch = स्टिच और सीम
construction-measures = दूरियाँ
construction-with = धागा, टेप, बारटैक
construction-per-inch = { $count } प्रति इंच
construction-lines = सीम, किनारे और रेखाएँ

## Artwork

artwork-sizes = { $from } से { $to }
artwork-all-sizes = सभी साइज़
artwork-true-size = { $width } × { $height } mm
artwork-placed = कहाँ लगेगा
artwork-original = मूल फ़ाइल
artwork-no-picture = इस फ़ाइल की तस्वीर नहीं है। मूल डाउनलोड करें।

## Labels

labels-care = देखभाल, लेबल के क्रम में
labels-signs = छोटे चिह्न केवल स्क्रीन पर मदद के लिए हैं। ये लेबल के देखभाल चिह्न नहीं हैं।

## Packing

packing-steps = चरण
packing-packs = रेशियो पैक: हर साइज़ के पीस
packing-pack = पैक
packing-every-colourway = हर रंग संयोजन
packing-total = कुल

## An item without a name

sheet-item = बिना नाम

## To be dyed

dyeing-title = योजना के पीस के लिए रंगना है
dyeing-substrate = किस पर
dyeing-colour = रंग
dyeing-kilograms = kg
dyeing-of = किसके लिए
dyeing-undyed = बिना रंगा रहेगा
dyeing-not-whole = इन किलो में शामिल नहीं:
dyeing-lacks-pieces = कितने पीस की योजना है, नहीं बताया
dyeing-lacks-parts = किन पार्ट में लगता है, नहीं बताया
dyeing-lacks-colour = रंग नहीं बताया
dyeing-parts-differ = इसके पार्ट के रंग अलग हैं
dyeing-lacks-consumption = एक गारमेंट में कितना लगता है, नहीं बताया
dyeing-lacks-unit = पीस में गिना जाता है, वज़न नहीं बताया
dyeing-lacks-mass = प्रति वर्ग मीटर वज़न नहीं बताया
dyeing-lacks-width = पूरी चौड़ाई नहीं बताई
dyeing-lacks-wastage = नुक़सान (वेस्टेज) नहीं बताया
dyeing-too-large = अंक बहुत बड़े हैं

## What composition labels say

composition-title = संरचना, लेबल के लिए
composition-draft = प्रोग्राम का मसौदा। लेबल के लिए ज़िम्मेदार व्यक्ति जाँचे।
materials-mass = { $mass } ({ $ounces } oz/yd²)
drawing-see = → { $number }
drawing-number = { $number } ·
