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

## What cannot be read

sheet-too-large = ফাইলটি খুব বড়। সর্বোচ্চ 8 MB-এর, শুধু দরকারি শিটের ফাইল পাঠান।
sheet-unknown = এটি শিট নয়। XLSX বা CSV ফাইল পাঠান।
sheet-unsupported = { $what } এখানে পড়া যায় না। XLSX হিসেবে সংরক্ষণ করে পাঠান।
sheet-encoding = এই লেখার অক্ষর চেনা যাচ্ছে না। “CSV UTF-8” বা XLSX হিসেবে সংরক্ষণ করুন।
sheet-too-far = { $cell } { $rows } সারি ও { $columns } কলামের বাইরে। যা দরকার নেই মুছে ফেলুন।
sheet-too-many-cells = { $most }টির বেশি ঘর ভরা। শুধু দরকারি শিট পাঠান।
sheet-too-many-sheets = ফাইলে { $most }টির বেশি শিট আছে। শুধু দরকারিটি পাঠান।
sheet-too-long = { $cell }-এ { $most }টির বেশি অক্ষর আছে।
sheet-nothing = এই ফাইলে কিছু নেই।
sheet-too-heavy = এই ফাইল পড়তে খুব বেশি সময় লাগে। শুধু দরকারি শিটটি নতুন XLSX ফাইলে পাঠান।
sheet-broken = ফাইলটি নষ্ট। আবার সংরক্ষণ করে পাঠান।
sheet-failed = ফাইলটি এখন পড়া গেল না। আবার চেষ্টা করুন।
