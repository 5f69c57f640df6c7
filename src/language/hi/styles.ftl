### The list of styles and one style.

styles-title = स्टाइल
styles-none = अभी कोई स्टाइल नहीं है।
styles-style = स्टाइल
styles-newest = सबसे नया रिवीज़न
styles-revision = रिवीज़न { $revision }
styles-draft-only = केवल ड्राफ़्ट
styles-threads = खुली चर्चाएँ
styles-rounds = चालू सैंपल राउंड
styles-create = स्टाइल शुरू करें
styles-create-button = स्टाइल शुरू करें

## One style

style-draft = ड्राफ़्ट
style-draft-first = अभी कुछ प्रकाशित नहीं है। कोई फ़ैक्टरी ड्राफ़्ट नहीं देखती।
style-draft-differs = ड्राफ़्ट सबसे नए रिवीज़न से अलग है। प्रकाशित करने तक कोई फ़ैक्टरी इसे नहीं देखेगी।
style-draft-same = ड्राफ़्ट सबसे नए रिवीज़न जैसा ही है।
style-publish = जाँचें और प्रकाशित करें
style-revisions = रिवीज़न
style-no-revisions = अभी कोई रिवीज़न प्रकाशित नहीं है।
style-revision = रिवीज़न { $number }
style-open-revision = रिवीज़न { $number } खोलें
style-older = पुराने रिवीज़न
style-published = प्रकाशन तिथि
style-published-by = प्रकाशित किया
style-fingerprint = फ़िंगरप्रिंट
style-withdrawn-because = रुकें। इससे काम न करें: { $reason }
style-acknowledged-by = { $name } ने पावती दी, { $date }
style-signed-factory = फ़ैक्टरी की ओर से { $name } ने हस्ताक्षर किए, { $date }
style-signed-brand = ब्रांड की ओर से { $name } ने हस्ताक्षर किए, { $date }
style-revision-head = रिवीज़न
style-state = स्थिति
style-reason = कारण
style-agreed = किसके साथ सहमति
style-next = आगे
style-next-you = आप
style-next-brand = ब्रांड
style-factory = फ़ैक्टरी
style-threads = खुली चर्चाएँ
style-no-threads = कुछ खुला नहीं है।
style-thread-item = किस बारे में
style-thread-words = क्या लिखा गया
style-thread-open = खोलें
style-rounds = सैंपल राउंड
style-no-rounds = अभी कोई सैंपल नहीं माँगा गया।
style-round-head = राउंड
style-round = { $kind }, राउंड { $number }
style-ask-round = सैंपल राउंड माँगें
style-shares = किसके साथ साझा
style-no-shares = अभी किसी फ़ैक्टरी के साथ साझा नहीं है।
style-shared-since = कब से
style-share = इस फ़ैक्टरी के साथ साझा करें
style-share-ended = { $date } को बंद
style-unshare = साझा बंद करें
style-unshare-what = { $factory } को इस स्टाइल का कुछ नहीं दिखेगा: न रिवीज़न, न चर्चा, न राउंड।
style-acts = आप क्या कर सकते हैं
style-withdraw = रिवीज़न { $number } वापस लें
style-withdraw-what = इसका हर पेज और हर प्रिंट रुकने को कहेगा। इसे वापस नहीं लिया जा सकता। कोई पुराना रिवीज़न इसकी जगह नहीं लेगा: नया प्रकाशित करें।
style-withdraw-reason = क्यों? पढ़ने वाला हर व्यक्ति आपका कारण देखेगा।

copy-title = यह स्टाइल कॉपी करें
copy-what = कॉपी ड्राफ़्ट की हर बात के साथ शुरू होती है। मंज़ूरियाँ, छूट, पीस और रंग संयोजन के नंबर कॉपी नहीं होते; न रिवीज़न, चर्चाएँ और राउंड।
copy-button = कॉपी शुरू करें
style-copy = नए स्टाइल में कॉपी करें
style-copied-from = किससे कॉपी किया
