### The list of styles and one style.

styles-title = স্টাইল
styles-none = এখনো কোনো স্টাইল নেই।
styles-style = স্টাইল
styles-newest = সবচেয়ে নতুন রিভিশন
styles-revision = রিভিশন { $revision }
styles-draft-only = শুধু ড্রাফট
styles-threads = খোলা আলোচনা
styles-rounds = চলমান স্যাম্পল রাউন্ড
styles-create = নতুন স্টাইল শুরু
styles-create-button = স্টাইল শুরু করুন

## One style

style-draft = ড্রাফট
style-draft-first = এখনো কিছু প্রকাশ হয়নি। কোনো ফ্যাক্টরি ড্রাফট দেখে না।
style-draft-differs = ড্রাফট সবচেয়ে নতুন রিভিশনের মতো নয়। প্রকাশ না করা পর্যন্ত কোনো ফ্যাক্টরি দেখবে না।
style-draft-same = ড্রাফট সবচেয়ে নতুন রিভিশনের মতোই।
style-publish = যাচাই ও প্রকাশ
style-revisions = রিভিশন
style-no-revisions = এখনো কোনো রিভিশন প্রকাশ হয়নি।
style-revision = রিভিশন { $number }
style-open-revision = রিভিশন { $number } খুলুন
style-older = পুরোনো রিভিশন
style-published = প্রকাশের তারিখ
style-published-by = প্রকাশ করেছেন
style-fingerprint = ফিঙ্গারপ্রিন্ট
style-withdrawn-because = থামুন। এটি মেনে কাজ করবেন না: { $reason }
style-acknowledged-by = { $name } প্রাপ্তি স্বীকার করেছেন, { $date }
style-signed-factory = ফ্যাক্টরির পক্ষে { $name } সই করেছেন, { $date }
style-signed-brand = ব্র্যান্ডের পক্ষে { $name } সই করেছেন, { $date }
style-revision-head = রিভিশন
style-state = অবস্থা
style-reason = কারণ
style-agreed = যাদের সাথে একমত
style-next = এরপর
style-next-you = আপনি
style-next-brand = ব্র্যান্ড
style-factory = ফ্যাক্টরি
style-threads = খোলা আলোচনা
style-no-threads = কিছু খোলা নেই।
style-thread-item = কী নিয়ে
style-thread-words = যা লেখা হয়েছে
style-thread-open = খুলুন
style-rounds = স্যাম্পল রাউন্ড
style-no-rounds = এখনো কোনো স্যাম্পল চাওয়া হয়নি।
style-round-head = রাউন্ড
style-round = { $kind }, রাউন্ড { $number }
style-ask-round = স্যাম্পল রাউন্ড চান
style-shares = যাদের সাথে শেয়ার
style-no-shares = এখনো কোনো ফ্যাক্টরির সাথে শেয়ার হয়নি।
style-shared-since = যখন থেকে
style-share = এই ফ্যাক্টরির সাথে শেয়ার
style-share-ended = শেষ { $date }
style-unshare = শেয়ার শেষ করুন
style-unshare-what = { $factory } এই স্টাইলের আর কিছু দেখবে না: রিভিশন, আলোচনা, রাউন্ড কিছুই না।
style-acts = আপনি যা করতে পারেন
style-withdraw = রিভিশন { $number } প্রত্যাহার করুন
style-withdraw-what = এর প্রতিটি পাতা ও প্রিন্ট থামতে বলবে। এটি ফেরানো যাবে না। পুরোনো কোনো রিভিশন এর জায়গা নেবে না: নতুন প্রকাশ করুন।
style-withdraw-reason = কেন? যিনি পড়বেন তিনিই আপনার কারণ দেখবেন।

copy-title = এই স্টাইল কপি করুন
copy-what = কপি শুরু হয় ড্রাফটের সবকিছু নিয়ে। অনুমোদন, ছাড়, পিসের সংখ্যা ও কালারওয়ের নম্বর কপি হয় না; রিভিশন, আলোচনা, রাউন্ডও না।
copy-button = কপি শুরু করুন
style-copy = নতুন স্টাইলে কপি করুন
style-copied-from = যেখান থেকে কপি
