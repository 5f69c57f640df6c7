### What stands around every page: title, navigation, footer.

frame-skip = মূল পাতায় যান
frame-nav = প্রধান মেনু
frame-sign-out = সাইন আউট
frame-foot = Fellseam দিয়ে তৈরি

nav-needs = আমার করণীয়
nav-styles = স্টাইল
nav-people = লোকজন
nav-me = আমার পাতা

language-label = ভাষা
language-unchecked = প্রোগ্রামের নির্মাতাদের লেখা, মাতৃভাষীর যাচাই হয়নি: { $languages }।
name-erased = (নাম মুছে ফেলা হয়েছে)

## What the form before this page has done

said-saved = সংরক্ষণ হয়েছে।
said-made = তৈরি হয়েছে।
said-restored = অংশটি আগের মতো করা হয়েছে।
said-published = প্রকাশ হয়েছে।
said-shared = শেয়ার করা হয়েছে।
said-unshared = আর শেয়ার করা নেই।
said-withdrawn = প্রত্যাহার করা হয়েছে।
said-acknowledged = প্রাপ্তি স্বীকার হয়েছে।
said-signed = সই হয়েছে।
said-sent = পাঠানো হয়েছে।
said-photographed = ছবি যোগ হয়েছে।
said-translated = অনুবাদটি বার্তার পাশে রাখা হয়েছে।
said-moved = হয়েছে।
said-measured = মাপ সংরক্ষণ হয়েছে।
said-decided = সিদ্ধান্ত হয়েছে।
said-sealed = সিল করা হয়েছে।
said-begun = শুরু হয়েছে।
said-concluded = শেষ হয়েছে।
said-ended = এই ব্যক্তি আর সাইন ইন করতে পারবেন না।

## What needs me

needs-none = আপনার কোনো কাজ বাকি নেই।
needs-since = { $date } থেকে
needs-styles = আপনার স্টাইল
needs-no-styles = আপনার সাথে এখনো কোনো স্টাইল শেয়ার করা হয়নি। তৈরি হলে ব্র্যান্ড শেয়ার করবে।
needs-newest = রিভিশন { $revision }
need-acknowledge = রিভিশন { $revision } পড়ে প্রাপ্তি স্বীকার করুন
need-sign-revision = রিভিশন { $revision } সই করুন
need-sign-revision-blocked = রিভিশন { $revision }: সই করার আগে কী বাকি আছে দেখুন
need-answer = উত্তর দিন: { $kind }
need-read-answer = উত্তর পড়ুন: { $kind }
need-change = পরের রিভিশনে বদলান: { $kind }
need-round-start = স্যাম্পল রাউন্ড { $number } শুরু করুন, { $kind }
need-round-measure = স্যাম্পল রাউন্ড { $number } মেপে পাঠান, { $kind }
need-round-receive = স্যাম্পল রাউন্ড { $number } পৌঁছেছে কিনা জানান, { $kind }
need-round-check = স্যাম্পল রাউন্ড { $number } মাপুন, { $kind }
need-round-decide = স্যাম্পল রাউন্ড { $number } নিয়ে সিদ্ধান্ত নিন, { $kind }
need-round-sign-blocked = স্যাম্পল রাউন্ড { $number }, { $kind }: সই করার আগে কী বাকি আছে দেখুন
need-round-sign = স্যাম্পল রাউন্ড { $number }-এর সিদ্ধান্তে সই করুন, { $kind }
need-approvals-decide = অনুমোদনের জন্য জমা নমুনায় সিদ্ধান্ত নিন: { $count }
need-approvals-submit = যার অনুমোদন লাগে তা জমা দিন: { $count }
need-sign-seal = স্যাম্পল রাউন্ড { $number }-এর সিলে সই করুন, { $kind }
need-sign-seal-blocked = স্যাম্পল রাউন্ড { $number }-এর সিল, { $kind }: সই করার আগে কী খোলা আছে দেখুন
need-inspection = বাল্ক পরিদর্শন করুন: পরিদর্শন { $number }
need-inspection-decide = বাল্ক পরিদর্শন { $number }-এর লট নিয়ে সিদ্ধান্ত নিন
need-inspection-again = বাল্ক পরিদর্শন { $number }-এর লট মেরামত করে আবার পরিদর্শন করুন

frame-working = কাজ চলছে। এই পাতা নিজে থেকেই এগোবে।
frame-sending = ফাইল পাঠানো হচ্ছে: { $files }টি, { $size } MB। এই পাতা নিজে থেকেই এগোবে।
