### Signing in and out, setting up, invitations.

sign-in-title = साइन इन
sign-in-login = ई-मेल या साइन-इन नाम
sign-in-password = पासवर्ड
sign-in-wrong = नाम या पासवर्ड सही नहीं है। फिर कोशिश करें।
sign-in-code = मेरे पास दूसरे डिवाइस का कोड है
sign-in-lost = पासवर्ड नहीं है? जिसने आपको बुलाया उससे नया लिंक माँगें।

set-up-title = Fellseam सेट अप करें
set-up-what = आप यहाँ पहले हैं। ब्रांड का और अपना नाम लिखें: आप इसके मालिक बनेंगे।
set-up-brand = ब्रांड का नाम
set-up-name = आपका नाम
set-up-button = सेट अप करें

join-title = अंदर आएँ
join-for = यह लिंक { $name } के लिए है
join-as = आप { $org } के { $role } के रूप में आ रहे हैं।
join-name = आपका नाम
join-button = अंदर आएँ
join-once = लिंक एक ही बार चलता है। बटन दबाने तक वह ख़र्च नहीं होता।

spent-title = यह लिंक काम नहीं करता
spent-why = यह पहले इस्तेमाल हो चुका है, या इसका समय ख़त्म हो गया।

code-title = आपके दूसरे डिवाइस का कोड
code-label = कोड
code-where = दूसरे डिवाइस पर “मेरा पेज” खोलें और “कोड दिखाएँ” चुनें।
code-wrong = यह कोड सही नहीं है, या समय ख़त्म हो गया। नया कोड बनाएँ।
code-button = अंदर आएँ

me-title = मेरा पेज
me-about = मेरे बारे में
me-save = सहेजें
me-second = दूसरा डिवाइस
me-second-what = नए लिंक के बिना अपने फ़ोन या कंप्यूटर पर Fellseam खोलें।
me-second-button = कोड दिखाएँ
me-code-title = दूसरे डिवाइस के लिए कोड
me-code-how = दूसरे डिवाइस पर { $address } खोलें और यह कोड लिखें। यह दस मिनट तक, एक बार चलता है।
me-code-qr = कोड लिखने का पेज खोलता है
me-password = पासवर्ड
me-password-what = पासवर्ड से आप बिना लिंक साइन इन कर सकते हैं। इसे रखने पर बाकी डिवाइस साइन आउट हो जाते हैं।
me-password-old = अभी का पासवर्ड
me-password-new = नया पासवर्ड
me-password-button = पासवर्ड रखें
me-out = हर जगह से साइन आउट
me-out-what = सभी डिवाइस पर आपके सभी सत्र बंद करता है।
me-out-sure = इस डिवाइस से भी साइन आउट हो जाएगा। फिर से आने के लिए पासवर्ड या नया लिंक चाहिए।
me-out-button = हर जगह से साइन आउट करें
