### Ready instructions for callouts and for how to measure.

instruction-allowance = सिलाई मार्जिन { $value }।
instruction-topstitch-seam = सिलाई से { $value } पर टॉपस्टिच करें।
instruction-topstitch-edge = किनारे से { $value } पर टॉपस्टिच करें।
instruction-two-rows = दो समानांतर सिलाई, बीच में { $value }।
instruction-turn-under = किनारा { $value } अंदर मोड़कर सिल दें।
instruction-bartack-ends = दोनों सिरों पर बारटैक करें।
instruction-backstitch = शुरू और अंत में बैकस्टिच करें।
instruction-press-open = सिलाई खोलकर प्रेस करें।
instruction-press-back = सिलाई पीछे की ओर प्रेस करें।
instruction-no-raw-edges = अंदर कोई कच्चा किनारा न रहे।
instruction-seams-meet = सिलाइयाँ मिलें।
instruction-stripes-match = सिलाई पर धारियाँ मिलें।
instruction-no-puckers = सिकुड़न न हो।
instruction-stretch-evenly = सिलते समय रिब को बराबर खींचें।
instruction-fuse-first = सिलने से पहले फ्यूज़ करें।
instruction-trim-threads = सभी धागे काट दें।
instruction-centred = बीच में।
instruction-catch-label = लेबल को सिलाई में लें।
instruction-lay-flat = कपड़े को सपाट रखें और बिना खींचे समतल करें।
instruction-zip-closed = ज़िप बंद करके नापें।
instruction-along-curve = घुमाव के साथ नापें।
instruction-rib-flat = रिब सपाट होने तक खींचें, फिर नापें।
instruction-below-armhole = आर्महोल से { $value } नीचे।
instruction-below-shoulder = कंधे के ऊँचे बिंदु से { $value } नीचे।
instruction-above-hem = हेम से { $value } ऊपर।
