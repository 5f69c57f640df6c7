### Why an act is refused, and the way on.

## Publishing and withdrawing

refused-section-moved = आपके पेज खोलने के बाद किसी और ने { $count } भाग सहेजे। नीचे जो नया है उसे पढ़ें, फिर प्रकाशित करें।
refused-errors-remain = { $count } ग़लतियाँ बाकी हैं। नीचे की सूची सुधारें, फिर प्रकाशित करें।
refused-warning-reason-missing = { $count } चेतावनियों का कारण नहीं है। सुधारें, या लिखें कि ऐसा क्यों रहे। कारण रिवीज़न में छपेगा।
refused-reason-missing = कारण लिखें। बाद में दूसरे इसे पढ़ेंगे।
refused-draft-unchanged = ड्राफ़्ट रिवीज़न { $revision } जैसा ही है। पहले कुछ बदलें।
refused-must-fix-unchanged = सहमति वाले { $count } ज़रूरी सुधार ड्राफ़्ट में नहीं बदले गए। बदलें, छूट दें, या बंद करें।
refused-already-withdrawn = यह रिवीज़न पहले ही वापस लिया जा चुका है।
refused-not-current = यह मौजूदा रिवीज़न नहीं है। मौजूदा रिवीज़न { $revision } है। वहाँ क्या बदला, पढ़ें।
refused-none-current = यह मौजूदा रिवीज़न नहीं है, और अभी कोई मौजूदा नहीं है: सबसे नया वापस लिया गया। ब्रांड के नया प्रकाशित करने तक रुकें।
refused-not-shared = यह स्टाइल अभी फ़ैक्टरी के साथ साझा नहीं है। ब्रांड इसे फिर साझा कर सकता है।
refused-already-acknowledged = आपकी फ़ैक्टरी इस रिवीज़न की पावती पहले ही दे चुकी है।

## Whose move it is

refused-only-brand = यह केवल ब्रांड कर सकता है।
refused-only-factory = यह केवल फ़ैक्टरी कर सकती है।
refused-not-the-asker = यह केवल पूछने वाला, या उसके संगठन का मुखिया कर सकता है।
refused-only-brand-closes = इसे केवल ब्रांड बंद कर सकता है। यह है: { $kind }।
refused-other-side-first = दूसरे पक्ष ने अभी जवाब नहीं दिया। जवाब का इंतज़ार करें।

## Threads

refused-thread-not-in = यह अभी नहीं हो सकता। चर्चा की स्थिति: { $state }।
refused-thread-closed = यह चर्चा बंद है। फिर से खोलें, या नया सवाल पूछें।
refused-no-such-move = इस तरह की चर्चा में यह नहीं हो सकता: { $kind }।
refused-item-unchanged = रिवीज़न { $revision } इसे नहीं बदलता। पहले ड्राफ़्ट में बदलें और प्रकाशित करें।
refused-sample-too-old = सैंपल रिवीज़न { $revision } से पहले बना था। उस रिवीज़न या बाद का सैंपल नापें।

## Rounds

refused-round-not-in = यह अभी नहीं हो सकता। राउंड की स्थिति: { $state }।
refused-nothing-measured = अभी कुछ नापा नहीं गया। पहले कम से कम एक पीस नापें।
refused-only-corrections = राउंड का फ़ैसला हो चुका है। अब नाप केवल सुधारा जा सकता है, जोड़ा नहीं।
refused-pieces-missing = बताएँ किस साइज़ के कितने पीस: कम से कम एक, { $most } से ज़्यादा नहीं, और केवल इस रिवीज़न के साइज़।
refused-substitutes-missing = बताएँ कि किस सामग्री की जगह कौन सी लगी है।
refused-changes-missing = बताएँ कि क्या बदलना है: कम से कम एक चीज़, शब्दों में।
refused-critical-out = { $count } ज़रूरी पॉइंट टॉलरेंस से बाहर हैं। फिर से बनाने को कहें, बदलाव के रूप में लिखें, या छूट दें।
refused-newer-revision-needed = पिछला राउंड बदलाव के साथ मंज़ूर हुआ। पहले रिवीज़न { $revision } के बाद का, इन बदलावों वाला रिवीज़न प्रकाशित करें।
refused-no-newer-revision = इससे नया रिवीज़न नहीं है।
refused-nothing-to-approve = इस रिवीज़न में इसकी मंज़ूरी नहीं चाहिए। किसकी चाहिए, वह सूची देखें।
refused-photo-missing = फ़ोटो जोड़ें: नमूना कम से कम एक फ़ोटो से परखा जाता है।
refused-option-decided = इस नमूने पर फ़ैसला हो चुका है: { $verdict }। दूसरे नमूने पर दूसरा फ़ैसला होता है।
refused-only-owner = सैंपल सिर्फ़ ब्रांड का मालिक सील करता है।
refused-already-sealed = इस राउंड के पीस पहले ही सील हो चुके हैं।
refused-too-early-to-seal = यह राउंड इस तरह का है: { $kind }। सैंपल प्री-प्रोडक्शन या टॉप ऑफ़ प्रोडक्शन राउंड से सील होता है।
refused-round-not-approved = यह राउंड: { $state }। सैंपल मंज़ूर राउंड से सील होता है।
refused-questions-before-sealing = खुले सवाल: { $count }। जवाब दें; पूछने वाला बंद करता है।
refused-must-fix-unverified = ज़रूरी सुधार जो किसी ने सैंपल पर नहीं देखे: { $count }। सैंपल पर जाँचें, या जाने दें।
refused-size-set-missing = इन साइज़ों और इस चार्ट का कोई साइज़ सेट इस फ़ैक्टरी के साथ मंज़ूर नहीं है।
refused-not-approved-yet = अभी मंज़ूर नहीं: { $count }।
refused-substitutes-sent = पीस दूसरी सामग्री के बने हैं। सील किया सैंपल स्पेक की सामग्री का होता है।
refused-piece-critical-out = रखे जाने वाले पीस पर टॉलरेंस से बाहर या बिना नापे ज़रूरी पॉइंट: { $count }। नापें, छूट दें, या दूसरा पीस सील करें।
refused-seal-unsaid = कम से कम एक पीस चुनें। हर एक को अपना सील नंबर दें और बताएँ कि वह कहाँ रखा है।

## Signing

refused-open-questions = { $count } सवाल खुले हैं। जवाब दें; पूछने वाला बंद करेगा। फिर हस्ताक्षर करें।
refused-must-fix-open = { $count } ज़रूरी सुधार इस रिवीज़न में नहीं हुए, और छूट भी नहीं दी गई। ब्रांड को बदलकर प्रकाशित करना होगा, या छूट देनी होगी।
refused-same-person-both-sides = आपने इस स्टाइल में दूसरे पक्ष की ओर से हस्ताक्षर किए हैं। एक व्यक्ति दोनों पक्षों की ओर से हस्ताक्षर नहीं करता: किसी और को करना होगा।
refused-already-signed = आपके पक्ष ने इस पर पहले ही हस्ताक्षर कर दिए हैं।
refused-not-acknowledged = पहले इस रिवीज़न की पावती दें, फिर हस्ताक्षर करें।
refused-nothing-decided = अभी हस्ताक्षर के लिए कोई फ़ैसला नहीं है। पहले ब्रांड को फ़ैसला करना होगा।
refused-role-does-not-sign = आपकी भूमिका हस्ताक्षर नहीं करती। अपने संगठन में किसी अधिकार वाले से कहें।
refused-screen-moved = आपके पेज खोलने के बाद यह बदल गया। फिर से पढ़ें, फिर हस्ताक्षर करें।
