### Ready instructions for callouts and for how to measure.

instruction-allowance = সেলাই অ্যালাউন্স { $value }।
instruction-topstitch-seam = সিম থেকে { $value } দূরে টপস্টিচ দিন।
instruction-topstitch-edge = কিনারা থেকে { $value } দূরে টপস্টিচ দিন।
instruction-two-rows = দুটি সমান্তরাল সেলাই, মাঝে { $value }।
instruction-turn-under = কিনারা { $value } ভেতরে ভাঁজ করে সেলাই করুন।
instruction-bartack-ends = দুই মাথায় বারট্যাক দিন।
instruction-backstitch = শুরু ও শেষে ব্যাকস্টিচ দিন।
instruction-press-open = সিম খুলে ইস্ত্রি করুন।
instruction-press-back = সিম পেছনের দিকে ইস্ত্রি করুন।
instruction-no-raw-edges = ভেতরে কাঁচা কিনারা থাকবে না।
instruction-seams-meet = সিমগুলো মিলবে।
instruction-stripes-match = সিমে স্ট্রাইপ মিলবে।
instruction-no-puckers = কুঁচকানো চলবে না।
instruction-stretch-evenly = সেলাইয়ের সময় রিব সমানভাবে টানুন।
instruction-fuse-first = সেলাইয়ের আগে ফিউজ করুন।
instruction-trim-threads = সব সুতা কেটে ফেলুন।
instruction-centred = মাঝখানে।
instruction-catch-label = লেবেল সিমের ভেতর সেলাই করুন।
instruction-lay-flat = পোশাক সমতলে রেখে না টেনে মসৃণ করুন।
instruction-zip-closed = চেইন বন্ধ করে মাপুন।
instruction-along-curve = বাঁক বরাবর মাপুন।
instruction-rib-flat = রিব সমান না হওয়া পর্যন্ত টেনে মাপুন।
instruction-below-armhole = আর্মহোলের { $value } নিচে।
instruction-below-shoulder = কাঁধের উঁচু বিন্দুর { $value } নিচে।
instruction-above-hem = হেমের { $value } উপরে।
