### Why an act is refused, and the way on.

## Publishing and withdrawing

refused-section-moved = 在你打开此页之后，有 { $count } 个部分被别人保存过。请先看下方的新内容，再发布。
refused-errors-remain = 还有 { $count } 个错误。请改正下列错误，再发布。
refused-warning-reason-missing = 有 { $count } 个警告没有写原因。请改正，或写明为何保持不变。原因会印在版本中。
refused-reason-missing = 请写明原因。以后别人会看到。
refused-draft-unchanged = 草稿与第 { $revision } 版相同。请先作修改。
refused-must-fix-unchanged = 有 { $count } 项已同意的必须修改在草稿中没有改。请修改该项，准予让步，或关闭它。
refused-already-withdrawn = 此版本已经撤回。
refused-not-current = 这不是现行版本。现行版本是第 { $revision } 版。请看那里有什么变更。
refused-none-current = 这不是现行版本，而且目前没有现行版本：最新版已撤回。请等品牌方发布新版本。
refused-not-shared = 此款式现在没有共享给工厂。品牌方可以重新共享。
refused-already-acknowledged = 你厂已经确认过此版本。

## Whose move it is

refused-only-brand = 只有品牌方可以这样做。
refused-only-factory = 只有工厂可以这样做。
refused-not-the-asker = 只有提问人或其单位的负责人可以这样做。
refused-only-brand-closes = 只有品牌方可以关闭。这是：{ $kind }。
refused-other-side-first = 对方还没有回复。请等回复。

## Threads

refused-thread-not-in = 现在不能这样做。当前状态：{ $state }。
refused-thread-closed = 此讨论已关闭。请重新打开，或提出新问题。
refused-no-such-move = 此类讨论不能这样做：{ $kind }。
refused-item-unchanged = 第 { $revision } 版没有修改这一项。请先在草稿中修改并发布。
refused-sample-too-old = 此样衣早于第 { $revision } 版。请测量按该版或更新版制作的样衣。

## Rounds

refused-round-not-in = 现在不能这样做。本轮状态：{ $state }。
refused-nothing-measured = 还没有测量。请先测量至少一件。
refused-only-corrections = 本轮已作决定。现在只能更正数值，不能新增。
refused-pieces-missing = 请写明各尺码件数：至少一件，不超过 { $most } 件，且只能是本版的尺码。
refused-substitutes-missing = 请写明用什么材料代替了什么材料。
refused-changes-missing = 请写明须修改什么：至少一项，并有文字说明。
refused-critical-out = 有 { $count } 个关键部位超出公差。请要求重做，列为修改，或准予让步。
refused-newer-revision-needed = 上一轮是修改后批准。请先发布第 { $revision } 版之后的新版本，并包含这些修改。
refused-no-newer-revision = 没有更新的版本。
refused-nothing-to-approve = 此版本不需要批核这一项。请看需要批核的清单。
refused-photo-missing = 请加一张照片：样品至少要凭一张照片判断。
refused-option-decided = 此样品已有决定：{ $verdict }。新的样品会有新的决定。
refused-only-owner = 只有品牌方的负责人可以封样。
refused-already-sealed = 此轮样衣已经封存。
refused-too-early-to-seal = 此轮的类型是：{ $kind }。只有产前样或大货首件样才能封样。
refused-round-not-approved = 此轮的状态是：{ $state }。只有已批准的样衣才能封样。
refused-questions-before-sealing = 还有未解决的问题：{ $count }。请回答，由提问者关闭。
refused-must-fix-unverified = 尚未在样衣上看到已改正的必须修改：{ $count }。请在样衣上核实，或予以放行。
refused-size-set-missing = 与此工厂没有相同尺码和尺寸表的已批准齐码样。
refused-not-approved-yet = 尚未批准：{ $count }。
refused-substitutes-sent = 样衣用了替代材料。封样必须用工艺单上的材料。
refused-piece-critical-out = 要保存的样衣有关键点超差或未测量：{ $count }。请测量，同意让步，或封存另一件。
refused-seal-unsaid = 请至少选择一件。每件写明各自的封签号和保存地点。
refused-seal-unsigned = 检验大货要以双方都已签字的封样为准。尚未签字：{ $sides }。
refused-lot-unsaid = 请填写本批每种配色和尺码的件数：至少一件，总数不超过 { $most }，且只能是此版本中的。
refused-not-for-rework = 品牌方没有把那一批退回返修。只有退回返修的批次才再次检验。
refused-inspected-again = 那一批已经在再次检验。
refused-lot-grown = 返修后的批次，任何配色和尺码的件数都不能比之前多。
refused-inspection-not-in = 现在不能这样做。检验状态：{ $state }。
refused-piece-unsaid = 请说明是哪一件：编号 1 到 { $most }，且同一配色和尺码不能多于本批所有。
refused-piece-beyond = 样本有 { $sample } 件。样本之外的只因致命缺陷才录入。
refused-piece-moved = 你打开页面后有人录入了此件。请先看，若要以你的为准再保存一次。
refused-defect-unsaid = 请说明缺陷在哪里，或用文字说明是什么。
refused-pieces-uninspected = 样本中尚未检验的件数：{ $count }。请先检验。
refused-lot-rejected = 本批被拒收，不能放行。可以让步、退回返修或不收。
refused-nothing-to-concede = 本批已接收，没有可让步的。请放行、退回返修或不收。
refused-critical-in-bulk = 有致命缺陷的件数：{ $count }。这样的批次只能退回返修或不收。

## Signing

refused-open-questions = 有 { $count } 个问题未解决。请回复；由提问人关闭。然后签字。
refused-must-fix-open = 有 { $count } 项必须修改在本版中未改，也未准予让步。品牌方必须修改并发布，或准予让步。
refused-same-person-both-sides = 你已代表此款式的另一方签字。一人不得代表双方：须由他人签字。
refused-already-signed = 你方已经签过字。
refused-not-acknowledged = 请先确认此版本，然后签字。
refused-nothing-decided = 还没有可签署的决定。须由品牌方先作决定。
refused-role-does-not-sign = 你的角色不能签字。请本单位有权的人签。
refused-screen-moved = 你打开此页后内容有变。请重新阅读，然后签字。
