### The signed record of a revision or a round.

record-title = স্বাক্ষরিত নথি
record-link = স্বাক্ষরিত নথি
record-round = পর্ব { $number }
record-round-head = নমুনা পর্ব
record-download = নথি নামান
record-what = কে কখন কিসে স্বাক্ষর করেছেন, এবং খতিয়ানের যে ভুক্তিগুলো তা বলে। নামানো ফাইলে এই সেবার স্বাক্ষর থাকে; বহু বছর পরেও যেকোনো যন্ত্রে তা যাচাই করা যায়।
record-style = স্টাইল
record-made = লেখার সময়
record-digest = যা স্বাক্ষরিত তার হ্যাশ
record-nothing = এখনও কোনো সিদ্ধান্ত হয়নি।
record-names = স্বাক্ষরকারী
record-unsigned = এখনও কেউ স্বাক্ষর করেননি।
record-moved = এই স্বাক্ষরের পরে মান সংশোধন হয়েছে; তখন স্বাক্ষর ছিল এতে:
record-chain = খতিয়ান
record-chain-what = লেখার সময় খতিয়ানে { $count }টি ভুক্তি ছিল। নিচের ভুক্তিগুলো এ কথা বলে; প্রতিটিতে আগেরটির হ্যাশ আছে।
record-head = খতিয়ানের শেষ
record-how = যাচাই করুন
record-how-what = প্রোগ্রামটি সংযোগ ছাড়াই ফাইল যাচাই করে এবং বদলানো মানটি দেখিয়ে দেয়:
record-key = এই সেবার প্রকাশ্য চাবি। অন্য কোথাও একটি অনুলিপি রাখুন, যাতে কেউ বদলে দিতে না পারে:
