### Sheets: what is written into them.

sheet-download = { $kind } ডাউনলোড
sheet-draft = ড্রাফট
sheet-base = বেস সাইজ { $size }
sheet-chart = সাইজ চার্ট
sheet-grading = গ্রেডিং
sheet-in-cm = cm-এ মাপ
sheet-in-inches = ইঞ্চিতে
sheet-further = আরও মাপ
sheet-materials = ম্যাটেরিয়াল
sheet-yes = হ্যাঁ
sheet-offset = যোগ
sheet-gap = ধাপ { $from } থেকে { $to }
sheet-what = এটি কী
sheet-wastage = অপচয়, %
sheet-needed = প্রয়োজন
sheet-kilograms = kg
sheet-pieces = প্রতি সাইজে পরিকল্পিত পিস
