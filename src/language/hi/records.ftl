### The signed record of a revision or a round.

record-title = हस्ताक्षरित अभिलेख
record-link = हस्ताक्षरित अभिलेख
record-round = दौर { $number }
record-round-head = नमूना दौर
record-download = अभिलेख उतारें
record-what = किसने कब किस पर हस्ताक्षर किए, और बही की वे प्रविष्टियाँ जो यह बताती हैं। उतारी गई फ़ाइल पर इस सेवा का हस्ताक्षर होता है; वर्षों बाद भी किसी भी मशीन पर उसकी जाँच हो सकती है।
record-style = स्टाइल
record-made = लिखा गया
record-digest = जिस पर हस्ताक्षर हुए उसका हैश
record-nothing = अभी कोई निर्णय नहीं हुआ।
record-names = हस्ताक्षर
record-unsigned = अभी किसी ने हस्ताक्षर नहीं किए।
record-moved = इस हस्ताक्षर के बाद मान सुधारे गए; हस्ताक्षर इस पर था:
record-chain = बही
record-chain-what = लिखे जाने के समय बही में { $count } प्रविष्टियाँ थीं। ये इसे बताती हैं; हर एक में पिछली का हैश है।
record-head = बही का अंत
record-how = जाँचें
record-how-what = प्रोग्राम बिना कनेक्शन के फ़ाइल जाँचता है और बदला हुआ मान बताता है:
record-key = इस सेवा की सार्वजनिक कुंजी। इसकी एक प्रति कहीं और रखें, ताकि कोई इसे बदल न सके:
