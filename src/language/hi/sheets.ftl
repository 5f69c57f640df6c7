### Sheets: what is written into them.

sheet-download = { $kind } डाउनलोड करें
sheet-draft = ड्राफ़्ट
sheet-base = बेस साइज़ { $size }
sheet-chart = साइज़ चार्ट
sheet-grading = ग्रेडिंग
sheet-in-cm = cm में
sheet-in-inches = इंच में
sheet-further = अन्य नाप
sheet-materials = मटीरियल
sheet-yes = हाँ
sheet-offset = जोड़ा गया
sheet-gap = अंतर { $from } से { $to }
sheet-what = यह क्या है
sheet-wastage = वेस्टेज, %
sheet-needed = ज़रूरत
sheet-kilograms = kg
sheet-pieces = हर साइज़ के योजना वाले पीस

## What cannot be read

sheet-too-large = फ़ाइल बहुत बड़ी है। अधिकतम 8 MB की, केवल ज़रूरी शीट वाली फ़ाइल भेजें।
sheet-unknown = यह शीट नहीं है। XLSX या CSV फ़ाइल भेजें।
sheet-unsupported = { $what } यहाँ नहीं पढ़ी जाती। XLSX में सहेजकर भेजें।
sheet-encoding = इस पाठ के अक्षर पहचाने नहीं गए। “CSV UTF-8” या XLSX में सहेजें।
sheet-too-far = { $cell } { $rows } पंक्तियों और { $columns } स्तंभों से बाहर है। जो ज़रूरी नहीं उसे हटाएँ।
sheet-too-many-cells = { $most } से अधिक खाने भरे हैं। केवल ज़रूरी शीट भेजें।
sheet-too-many-sheets = फ़ाइल में { $most } से अधिक शीट हैं। केवल ज़रूरी भेजें।
sheet-too-long = { $cell } में { $most } से अधिक अक्षर हैं।
sheet-nothing = इस फ़ाइल में कुछ नहीं है।
sheet-too-heavy = यह फ़ाइल पढ़ने में बहुत समय लेती है। केवल ज़रूरी शीट नई XLSX फ़ाइल में भेजें।
sheet-broken = फ़ाइल खराब है। फिर सहेजकर भेजें।
sheet-failed = फ़ाइल अभी पढ़ी नहीं जा सकी। फिर कोशिश करें।
