### People, factories and invitations.

people-title = লোকজন
people-name = নাম
people-role = ভূমিকা
people-org = প্রতিষ্ঠান
people-acts = আপনি যা করতে পারেন
people-left = প্রবেশ নেই
people-new-link = নতুন লিংক
people-end = প্রবেশ বন্ধ করুন
people-end-what = { $name } এখনই সব জায়গা থেকে সাইন আউট হবেন এবং আর ঢুকতে পারবেন না। তাঁর লেখা ও সই থেকে যাবে। এটা ফেরানো যায় না: তাঁকে আবার আনতে নতুন করে আমন্ত্রণ জানান।
people-add = কাউকে আমন্ত্রণ করুন
people-add-button = লিংক বানান
people-inspector = তৃতীয় পক্ষের পরিদর্শককে সেই ফ্যাক্টরিতে যোগ করা হয় যার লট তিনি দেখেন। সেই ফ্যাক্টরি যা পড়ে তিনিও তা পড়েন: রিভিশন, আলোচনা ও রাউন্ড; দাম নয়, অন্য ফ্যাক্টরিও নয়।
people-factory = ফ্যাক্টরি যোগ করুন
people-factory-name = ফ্যাক্টরির নাম
people-factory-button = ফ্যাক্টরি যোগ করুন
people-link-for = { $name }-এর জন্য লিংক
people-link-how = লিংকটি শুধু তাঁকেই পাঠান, আর কাউকে নয়। সাত দিনের মধ্যে একবার কাজ করে। এটি শুধু এখনই দেখা যাবে।
people-link-label = লিংক
people-link-qr = অথবা তাঁর ফোন দিয়ে স্ক্যান করুন
people-link-unreachable = এই ঠিকানা শুধু এই মেশিনে খোলে। অন্যদের জন্য লিংক বানাতে প্রোগ্রামটি --public-url দিয়ে চালু করুন।
