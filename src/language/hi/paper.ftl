### Prints, and the page behind their code.

## The sheets

paper-identity = पहचान और बदलाव
paper-pattern = पैटर्न कक्ष
paper-cutting = कटिंग और सामग्री
paper-sewing = सिलाई
paper-artwork = आर्टवर्क
paper-labels = लेबल और पैकिंग
paper-inspection = जाँच
paper-nothing = यहाँ कुछ नहीं कहा गया है।
paper-left-out = संलग्न नहीं, क्योंकि मूल फ़ाइलें मिलकर { $most } MB से बड़ी हैं: { $names }। रिवीज़न के पन्ने से डाउनलोड करें।
paper-page = पृष्ठ
paper-changed = संशोधन { $revision } के बाद बदला; पुराना मान कटा हुआ है
paper-scan = क्या यह प्रिंट अब भी मान्य है? स्कैन करें।
paper-for = किसके लिए छपा
paper-printed = छपने का समय
paper-band-draft = मसौदा। इससे सिलाई न करें।
paper-band-superseded = संशोधन { $revision } ने इसकी जगह ली। इससे सिलाई न करें।
paper-band-withdrawn = वापस लिया गया। रुकें। इससे सिलाई न करें।
paper-no-chart = अभी नाप की तालिका नहीं है: कुछ मान बाकी हैं।
paper-true-size = 100 % पर छापें। पैमाना 100 mm का होना चाहिए।
paper-larger = यह पृष्ठ { $width } × { $height } mm का है, बाकी से बड़ा। बड़े कागज़ पर या टुकड़ों में 100 % पर छापें।
paper-found = मिला नाप
paper-inspector = जाँचने वाला
paper-day = तारीख
paper-pieces = पीस, सैंपल या लॉट
paper-stage = दौर
paper-how-to-fill = हर मान के पास लिखें कि आपने क्या नापा। जब तक बिंदु कुछ और न कहे, सपाट और ढीला रखकर नापें।

## Where a print is asked for

print-title = छापें
print-what = आपकी चुनी शीटों की एक PDF। ड्राइंग और आर्टवर्क की मूल फ़ाइलें उसके साथ जुड़ी हैं।
print-language = भाषा
print-second = दूसरी भाषा
print-one = केवल एक भाषा
print-paper = कागज़
print-sheets = शीटें
print-for = किसके लिए
print-own = ब्रांड स्वयं
print-make = PDF बनाएँ
print-no-address = कुछ नहीं छपा: हर पृष्ठ का कोड केवल इसी मशीन पर ले जाता। प्रोग्राम चलाने वाला पहले उसका सार्वजनिक पता तय करे।
print-no-font = कुछ नहीं छपा: इस मशीन पर { $letters } का फ़ॉन्ट नहीं है। इसे चलाने वाला यह इंस्टॉल करे: { $packages }
print-failed = PDF नहीं बन सकी। कम शीटों के साथ कोशिश करें।

## The page behind the code on a print

now-title = क्या यह प्रिंट अब भी मान्य है?
now-current = चालू
now-superseded = बदला गया
now-withdrawn = वापस लिया गया
now-draft = मसौदा
now-go = यह प्रिंट संशोधन { $revision } का है, जो चालू है।
now-stop = इससे सिलाई न करें। संशोधन { $revision } नया है।
now-draft-stop = मसौदे से कभी उत्पादन नहीं होता। प्रकाशित संशोधन की प्रतीक्षा करें।
now-changes = { $count ->
    [one] तब से { $count } बदलाव
   *[other] तब से { $count } बदलाव
}
now-checked = { $time } UTC पर देखा गया
now-see = संशोधन देखें
