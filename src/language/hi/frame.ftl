### What stands around every page: title, navigation, footer.

frame-skip = मुख्य पेज पर जाएँ
frame-nav = मुख्य मेनू
frame-sign-out = साइन आउट
frame-foot = Fellseam से बना

nav-needs = मेरे काम
nav-styles = स्टाइल
nav-people = लोग
nav-me = मेरा पेज

language-label = भाषा
language-unchecked = प्रोग्राम बनाने वालों ने लिखा, मातृभाषी ने अभी नहीं जाँचा: { $languages }।
name-erased = (नाम मिटाया गया)

## What the form before this page has done

said-saved = सहेज लिया गया।
said-made = बन गया।
said-restored = यह भाग फिर वैसा ही है जैसा तब था।
said-published = प्रकाशित हुआ।
said-shared = साझा किया गया।
said-unshared = अब साझा नहीं है।
said-withdrawn = वापस लिया गया।
said-acknowledged = पावती दी गई।
said-signed = हस्ताक्षर हो गए।
said-sent = भेजा गया।
said-photographed = तस्वीरें जोड़ दी गईं।
said-translated = अनुवाद संदेश के साथ रख दिया गया।
said-moved = हो गया।
said-measured = नाप सहेजे गए।
said-decided = फ़ैसला हो गया।
said-sealed = सील किया गया।
said-begun = शुरू हुई।
said-concluded = निष्कर्ष निकला।
said-ended = यह व्यक्ति अब साइन इन नहीं कर सकता।

## What needs me

needs-none = आपके लिए कोई काम बाकी नहीं है।
needs-since = { $date } से
needs-styles = आपके स्टाइल
needs-no-styles = आपके साथ अभी कोई स्टाइल साझा नहीं है। तैयार होने पर ब्रांड साझा करेगा।
needs-newest = रिवीज़न { $revision }
need-acknowledge = रिवीज़न { $revision } पढ़ें और पावती दें
need-sign-revision = रिवीज़न { $revision } पर हस्ताक्षर करें
need-sign-revision-blocked = रिवीज़न { $revision }: हस्ताक्षर से पहले देखें कि क्या बाकी है
need-answer = जवाब दें: { $kind }
need-read-answer = जवाब पढ़ें: { $kind }
need-change = अगले रिवीज़न में बदलें: { $kind }
need-round-start = सैंपल राउंड { $number } शुरू करें, { $kind }
need-round-measure = सैंपल राउंड { $number } नापें और भेजें, { $kind }
need-round-receive = पुष्टि करें कि सैंपल राउंड { $number } पहुँच गया, { $kind }
need-round-check = सैंपल राउंड { $number } नापें, { $kind }
need-round-decide = सैंपल राउंड { $number } पर फ़ैसला करें, { $kind }
need-round-sign-blocked = सैंपल राउंड { $number }, { $kind }: हस्ताक्षर से पहले देखें कि क्या बाकी है
need-round-sign = सैंपल राउंड { $number } के फ़ैसले पर हस्ताक्षर करें, { $kind }
need-approvals-decide = मंज़ूरी के लिए दिए नमूनों पर फ़ैसला करें: { $count }
need-approvals-submit = जिनकी मंज़ूरी चाहिए वे दें: { $count }
need-sign-seal = सैंपल राउंड { $number } की सील पर हस्ताक्षर करें, { $kind }
need-sign-seal-blocked = सैंपल राउंड { $number } की सील, { $kind }: हस्ताक्षर से पहले देखें कि क्या खुला है
need-inspection = बल्क जाँचें: जाँच { $number }
need-inspection-decide = बल्क जाँच { $number } के लॉट पर फ़ैसला करें
need-inspection-again = बल्क जाँच { $number } का लॉट सुधारें और फिर जाँचें

frame-working = काम चल रहा है। यह पेज अपने आप आगे बढ़ेगा।
frame-sending = फ़ाइलें भेजी जा रही हैं: { $files }, { $size } MB। यह पेज अपने आप आगे बढ़ेगा।
