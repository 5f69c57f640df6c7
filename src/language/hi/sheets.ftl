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
