### People, factories and invitations.

people-title = लोग
people-name = नाम
people-role = भूमिका
people-org = संगठन
people-acts = आप क्या कर सकते हैं
people-left = पहुँच नहीं
people-new-link = नया लिंक
people-end = पहुँच बंद करें
people-end-what = { $name } तुरंत हर जगह से साइन आउट हो जाएँगे और फिर अंदर नहीं आ पाएँगे। उनका लिखा और उनके हस्ताक्षर बने रहेंगे। यह वापस नहीं होता: उन्हें फिर से जोड़ने के लिए नया निमंत्रण भेजें।
people-add = किसी को बुलाएँ
people-add-button = लिंक बनाएँ
people-inspector = तीसरे पक्ष का जाँचकर्ता उस फ़ैक्टरी में जोड़ा जाता है जिसके लॉट वह जाँचता है। वह वही पढ़ता है जो वह फ़ैक्टरी पढ़ती है: रिवीज़न, बातचीत और राउंड; न क़ीमतें, न दूसरी फ़ैक्टरी।
people-factory = फ़ैक्टरी जोड़ें
people-factory-name = फ़ैक्टरी का नाम
people-factory-button = फ़ैक्टरी जोड़ें
people-link-for = { $name } के लिए लिंक
people-link-how = यह लिंक केवल उसी को भेजें, किसी और को नहीं। सात दिन में एक बार चलता है। यह केवल अभी दिखेगा।
people-link-label = लिंक
people-link-qr = या उनके फ़ोन से स्कैन करें
people-link-unreachable = यह पता केवल इसी मशीन पर खुलता है। दूसरों के लिए लिंक बनाने को प्रोग्राम --public-url के साथ चलाएँ।
