### Signing in and out, setting up, invitations.

sign-in-title = সাইন ইন
sign-in-login = ই-মেইল বা সাইন-ইন নাম
sign-in-password = পাসওয়ার্ড
sign-in-wrong = নাম বা পাসওয়ার্ড ঠিক নয়। আবার চেষ্টা করুন।
sign-in-code = আমার অন্য ডিভাইস থেকে কোড আছে
sign-in-lost = পাসওয়ার্ড নেই? যিনি আমন্ত্রণ করেছেন তাঁর কাছে নতুন লিংক চান।

set-up-title = Fellseam সেট আপ
set-up-what = আপনি এখানে প্রথম। ব্র্যান্ডের ও নিজের নাম লিখুন: আপনি এর মালিক হবেন।
set-up-brand = ব্র্যান্ডের নাম
set-up-name = আপনার নাম
set-up-button = সেট আপ করুন

join-title = ভেতরে আসুন
join-for = এই লিংক { $name }-এর জন্য
join-as = আপনি { $org }-এর { $role } হিসেবে আসছেন।
join-name = আপনার নাম
join-button = ভেতরে আসুন
join-once = লিংক একবারই কাজ করে। বোতাম চাপার আগে তা শেষ হয় না।

spent-title = এই লিংক কাজ করে না
spent-why = এটি আগে ব্যবহার হয়েছে, অথবা সময় শেষ।

code-title = আপনার অন্য ডিভাইসের কোড
code-label = কোড
code-where = অন্য ডিভাইসে “আমার পাতা” খুলে “কোড দেখান” বাছুন।
code-wrong = কোডটি ঠিক নয়, অথবা সময় শেষ। নতুন কোড বানান।
code-button = ভেতরে আসুন

me-title = আমার পাতা
me-about = আমার সম্পর্কে
me-save = সংরক্ষণ
me-second = দ্বিতীয় ডিভাইস
me-second-what = নতুন লিংক ছাড়াই ফোন বা কম্পিউটারে Fellseam খুলুন।
me-second-button = কোড দেখান
me-code-title = দ্বিতীয় ডিভাইসের কোড
me-code-how = অন্য ডিভাইসে { $address } খুলে এই কোড লিখুন। দশ মিনিটের মধ্যে একবারই কাজ করে।
me-code-qr = কোড লেখার পাতা খোলে
me-password = পাসওয়ার্ড
me-password-what = পাসওয়ার্ড থাকলে লিংক ছাড়াই সাইন ইন করা যায়। পাসওয়ার্ড দিলে অন্য সব ডিভাইস সাইন আউট হবে।
me-password-old = এখনকার পাসওয়ার্ড
me-password-new = নতুন পাসওয়ার্ড
me-password-button = পাসওয়ার্ড দিন
me-out = সব জায়গা থেকে সাইন আউট
me-out-what = সব ডিভাইসে আপনার সব সেশন শেষ করে।
me-out-sure = এই ডিভাইস থেকেও সাইন আউট হবে। আবার ঢুকতে পাসওয়ার্ড বা নতুন লিংক লাগবে।
me-out-button = সব জায়গা থেকে সাইন আউট করুন
