import QtQuick
import QtTest
import Underbough.App
import Underbough.Test
import Underbough.Ui

/// The whole window over the small garden, driven with mouse and keys as a gardener would.
TestCase {
    id: testCase
    name: "Window"
    when: windowShown

    TestPages { id: pages }
    Main {
        id: window
        visible: true
        garden: pages.garden
        side: pages.side
        plan: pages.plan
        round: pages.round
        conditions: pages.conditions
        answers: pages.answers
        work: pages.work
        light: pages.light
        diary: pages.diary
        day: pages.day
        newGarden: pages.newGarden
        addTree: pages.addTree
        planEditor: pages.planEditor
        thing: pages.thing
        tree: pages.tree
        limb: pages.limb
        limbShape: pages.limbShape
        paper: pages.paper
        underlay: pages.underlay
        grounds: pages.grounds
        why: pages.why
        offers: pages.offers
        stages: pages.stages
    }

    function child(name) {
        const item = findChild(window.contentItem, name)
        verify(item, name)
        return item
    }
    function settle() {
        tryCompare(pages.garden, "isBusy", false, 60000)
    }
    function init() {
        pages.restart()
        window.requestActivate()
        settle()
    }
    function drawn(limb, station) {
        const drawing = child("sideDrawing")
        const at = pages.station(limb, station)
        return drawing.mapToItem(window.contentItem, at.x, at.y)
    }
    function drag(from, to) {
        mousePress(window.contentItem, from.x, from.y)
        for (let i = 1; i <= 8; ++i)
            mouseMove(window.contentItem, from.x + (to.x - from.x) * i / 8, from.y + (to.y - from.y) * i / 8)
        mouseRelease(window.contentItem, to.x, to.y)
    }

    function test_01_answersStandBesideTheDrawing() {
        verify(pages.answers.roomHeadline.length > 0)
        verify(pages.answers.stormHeadline.length > 0)
        verify(pages.answers.sunHeadline.length > 0)
        verify(pages.work.outcome.length > 0)
        verify(pages.work.cautions.length >= 5)
        compare(child("roomCard").headline, pages.answers.roomHeadline)
    }

    function test_02_draggingALimbsEndMovesItAndUndoesInOneStep() {
        const before = pages.height_m("bough", 2)
        const figure = pages.answers.stormHeadline
        const from = drawn("bough", 2)
        drag(from, Qt.point(from.x + 20, from.y - 60))
        verify(pages.height_m("bough", 2) > before + 0.3)
        compare(pages.garden.undoName, "move path bough")
        verify(pages.garden.isDirty)
        verify(window.title.indexOf("*") >= 0)
        settle()
        verify(pages.answers.stormHeadline !== figure)
        keyClick(Qt.Key_Z, Qt.ControlModifier)
        compare(pages.height_m("bough", 2), before)
        verify(!pages.garden.isDirty)
        verify(pages.garden.canRedo)
    }

    function test_03_figuresAnswerWhileTheButtonIsStillDown() {
        const figure = pages.answers.stormHeadline
        const from = drawn("bough", 2)
        mousePress(window.contentItem, from.x, from.y)
        mouseMove(window.contentItem, from.x + 40, from.y + 5)
        mouseMove(window.contentItem, from.x + 60, from.y + 5)
        tryVerify(() => pages.answers.stormHeadline !== figure, 20000)
        mouseRelease(window.contentItem, from.x + 60, from.y + 5)
    }

    function test_04_oneStrokeDrawsALimb() {
        mouseClick(child("drawButton"))
        const stem = drawn("stem", 1)
        drag(Qt.point(stem.x, stem.y - 40), Qt.point(stem.x - 120, stem.y - 110))
        compare(pages.limbCount(), 3)
        compare(pages.garden.undoName, "draw a limb")
        verify(!child("drawButton").checked)
        compare(pages.side.chosenLimb, "limb-1")
        pages.garden.undo()
        compare(pages.limbCount(), 2)
    }

    function test_05_aStrokeFromThinAirIsExplained() {
        mouseClick(child("drawButton"))
        const stem = drawn("stem", 1)
        drag(Qt.point(stem.x - 200, stem.y), Qt.point(stem.x - 260, stem.y - 50))
        compare(pages.limbCount(), 2)
        verify(pages.garden.problem.length > 0)
        mouseClick(child("problemButton"))
        compare(pages.garden.problem, "")
        mouseClick(child("drawButton"))
    }

    function test_06_allOfItByKeyboard() {
        pages.side.chooseLimb("bough")
        const before = pages.height_m("bough", 2)
        let guard = 0
        window.contentItem.forceActiveFocus()
        while (!(window.activeFocusItem && window.activeFocusItem.limbId === "bough" && window.activeFocusItem.isEnd) && ++guard < 60)
            keyClick(Qt.Key_Tab)
        verify(guard < 60)
        keyClick(Qt.Key_Up)
        keyClick(Qt.Key_Up)
        fuzzyCompare(pages.height_m("bough", 2), before + 0.1, 1e-9)
        keyClick(Qt.Key_Down, Qt.ShiftModifier)
        fuzzyCompare(pages.height_m("bough", 2), before - 0.4, 1e-9)
        keyClick(Qt.Key_Z, Qt.ControlModifier)
        fuzzyCompare(pages.height_m("bough", 2), before, 1e-9)
        keyClick(Qt.Key_Insert)
        compare(pages.limbCount(), 3)
        compare(window.activeFocusItem.limbId, "limb-1")
        keyClick(Qt.Key_Delete)
        compare(pages.limbCount(), 2)
    }

    function test_07_clickingWoodChoosesALimbAndItCanBeRenamed() {
        const a = drawn("bough", 1)
        mouseClick(window.contentItem, a.x, a.y)
        compare(pages.side.chosenLimb, "bough")
        const field = child("limbName")
        mouseClick(field)
        field.selectAll()
        for (const letter of "gate")
            keyClick(letter)
        keyClick(Qt.Key_Return)
        compare(pages.side.limbName, "gate")
        compare(pages.garden.undoName, "rename path bough")
    }

    function test_08_moreGustMoreLoad() {
        const slide = child("gustSlide")
        slide.forceActiveFocus()
        const figure = pages.answers.stormHeadline
        const word = pages.conditions.gustWord
        for (let i = 0; i < 12; ++i)
            keyClick(Qt.Key_Right)
        compare(pages.conditions.gust, 37)
        verify(pages.conditions.gustWord !== word)
        settle()
        verify(pages.answers.stormHeadline !== figure)
    }

    function test_09_theHourMovesTheSun() {
        const text = pages.conditions.sunText
        child("hourSlide").forceActiveFocus()
        for (let i = 0; i < 12; ++i)
            keyClick(Qt.Key_Left)
        tryVerify(() => pages.conditions.sunText !== text, 20000)
    }

    function test_10_walkingRoundByTheEyeOnThePlan() {
        const eye = child("eye")
        const bearing = pages.side.bearing
        const from = eye.mapToItem(window.contentItem, eye.width / 2, eye.height / 2)
        drag(from, Qt.point(from.x + 60, from.y - 60))
        verify(pages.side.bearing !== bearing)
        compare(pages.garden.canUndo, false)
    }

    function test_11_saveAndOpenGiveTheSameGardenBack() {
        pages.side.chooseLimb("bough")
        pages.side.renameLimb("kept")
        verify(pages.garden.isDirty)
        verify(pages.garden.saveAs(pages.file("kept.json")))
        verify(!pages.garden.isDirty)
        verify(window.title.indexOf("kept") >= 0)
        verify(window.title.indexOf("*") < 0)
        pages.restart()
        verify(pages.garden.open(pages.file("kept.json")))
        pages.side.chooseLimb("bough")
        compare(pages.side.limbName, "kept")
    }

    function test_11_aGardenFileSavesItselfAndItsUndoOutlivesTheWindow() {
        verify(pages.garden.saveAs(pages.file("kept.underbough")))
        pages.side.chooseLimb("bough")
        pages.side.renameLimb("kept")
        verify(!pages.garden.isDirty)
        tryCompare(child("saveState"), "text", "All saved")
        pages.restart()
        compare(pages.garden.saveState, "")
        verify(pages.garden.open(pages.file("kept.underbough")))
        compare(pages.garden.canUndo, true)
        pages.side.chooseLimb("bough")
        compare(pages.side.limbName, "kept")
        mouseClick(child("undoButton"))
        verify(pages.side.limbName !== "kept")
        compare(pages.garden.canRedo, true)
        compare(pages.garden.problem, "")
    }

    function test_12_aBrokenFileIsSaidAndTheGardenStays() {
        verify(!pages.garden.open(pages.file("nothing-there.json")))
        tryCompare(child("problemText"), "visible", true)
        compare(pages.limbCount(), 2)
        pages.garden.dismissProblem()
    }

    function test_13_unsavedChangesAreAskedAboutBeforeTheWindowCloses() {
        pages.side.chooseLimb("bough")
        pages.side.renameLimb("unsaved")
        window.close()
        verify(window.visible)
        const cancel = findChild(window, "cancelButton")
        verify(cancel)
        tryCompare(cancel, "visible", true)
        mouseClick(cancel)
        verify(window.visible)
        compare(pages.side.limbName, "unsaved")
    }

    function test_14_cautionsAreInSightAndAllCanBeRead() {
        const button = child("cautionsButton")
        const text = child("cautionsText")
        verify(text.visible && text.text.length > 0)
        const closed = text.text.length
        mouseClick(button)
        verify(text.text.length > closed)
        for (const caution of pages.work.cautions)
            verify(text.text.indexOf(caution) >= 0)
        mouseClick(button)
    }

    function test_15_everyHandleHasANameAndIsBigEnoughForAFinger() {
        let seen = 0
        const drawing = child("sideDrawing")
        for (let i = 0; i < drawing.children.length; ++i) {
            const handle = drawing.children[i]
            if (handle.limbId === undefined)
                continue
            ++seen
            verify(handle.Accessible.name.length > 0)
            verify(handle.width >= 24 && handle.height >= 24)
        }
        compare(seen, 5)
    }

    function test_16_aPressWithTheSawTriesACutAndChangesNothing() {
        mouseClick(child("sawButton"))
        verify(pages.side.isSawing)
        const foot = drawn("bough", 0)
        mouseClick(window.contentItem, foot.x + 4, foot.y)
        tryCompare(pages.work.trial, "count", 1)
        tryCompare(pages.work.trial, "isBusy", false, 10000)
        tryVerify(() => pages.work.trial.headline.length > 0)
        compare(child("trialCard").headline, pages.work.trial.headline)
        verify(!pages.garden.isDirty)
        compare(pages.limbCount(), 2)
        mouseClick(child("sawButton"))
        verify(!pages.side.isSawing)
        child("clearTrial").clicked()
        tryCompare(pages.work.trial, "count", 0)
    }

    function test_17_aSuggestedCutThatIsLeftIsNotSuggestedAgain() {
        const cuts = pages.work.cuts
        verify(cuts.rowCount() > 0)
        pages.work.goals.keep("bough")
        settle()
        verify(pages.garden.isDirty)
        compare(pages.garden.undoName, "leave a limb")
        compare(findChild(window.contentItem, "leave-bough"), null)
        child("dropGoal0").clicked()
        settle()
        verify(findChild(window.contentItem, "leave-bough"))
    }

    function test_18_theSearchIsStoppedAndTakenUpAgain() {
        const line = child("searchLine")
        tryCompare(line, "visible", false, 60000)
        pages.holdsSearch = true
        pages.side.chooseLimb("bough")
        pages.side.thicken("bough", 0, 4)
        tryCompare(pages.answers, "isBusy", true)
        tryCompare(line, "visible", true, 2000) // 0.3 s
        const figure = pages.answers.stormHeadline
        mouseClick(findChild(line, "stopWork"))
        tryCompare(pages.answers, "isBusy", false)
        verify(pages.answers.isStopped)
        verify(line.visible)
        compare(child("searchText").text, "Stopped. Cuts, sun and ranges are not those of what is drawn now.")
        tryCompare(pages.garden, "isBusy", false)
        // What answers under the hand still does, and a change starts the search again.
        pages.side.thicken("bough", 0, -8)
        tryVerify(() => pages.answers.stormHeadline !== figure)
        tryCompare(pages.answers, "isBusy", true)
        verify(!pages.answers.isStopped)
        tryVerify(() => findChild(line, "stopWork").visible)
        mouseClick(findChild(line, "stopWork"))
        verify(pages.answers.isStopped)
        pages.holdsSearch = false
        mouseClick(child("goOn"))
        tryCompare(pages.work, "isCurrent", true, 60000)
        tryCompare(line, "visible", false, 60000)
    }

    function test_19_aLimbGrownByKeyFromATipCarriesItself() {
        for (const [limb, station] of [["stem", 2], ["bough", 2]]) {
            pages.side.growLimb(limb, station)
            const grown = pages.side.chosenLimb
            compare(pages.side.limbName, "limb 1")
            verify(pages.diameter_m(grown, 0) <= pages.diameter_m(limb, station))
            tryVerify(() => pages.utilisation(grown) >= 0, 20000)
            settle()
            verify(pages.utilisation(grown) < 1, grown + ": " + pages.utilisation(grown))
            pages.garden.undo()
        }
    }

    function test_20_theChosenLimbsFiguresAreReadInFullAndNothingMoves() {
        const drawing = child("sideDrawing")
        const before = [drawing.x, drawing.y, drawing.width, drawing.height]
        pages.side.chooseLimb("bough")
        settle()
        const load = child("limbLoadText")
        verify(load.text.length > 60)
        for (const text of [load, child("limbFactsText")])
            verify(!text.truncated && text.contentWidth <= text.width + 1, text.text)
        compare([drawing.x, drawing.y, drawing.width, drawing.height].join(), before.join())
        // The drawing has the height of the panel beneath its buttons, and the tree most of it.
        verify(pages.side.isFitted)
        verify(drawing.height > 0.8 * drawing.parent.parent.height)
        const high = pages.station("stem", 1).y - pages.station("stem", 2).y // 3 of 5 m and the leaf over it
        verify(high / 3 * 6.6 > 0.7 * drawing.height, high + " of " + drawing.height)
    }

    function test_21_whatStandsBesideTheViewAllRoundKeepsItsPlaces() {
        window.showsRound = true
        tryVerify(() => findChild(window.contentItem, "roundPage") !== null)
        const page = child("roundPage")
        waitForRendering(page)
        const bottom = (name) => {
            const item = findChild(page, name)
            return item.mapToItem(page, 0, 0).y + item.height
        }
        tryVerify(() => bottom("eraseButton") > bottom("limbName") + 40 && bottom("eraseButton") <= page.height)
        window.showsRound = false
    }

    function test_90_theWorkComesOnPaperByKeysAlone() {
        keyClick(Qt.Key_P, Qt.ControlModifier)
        tryVerify(() => pages.paper.pageCount > 1, 60000)
        const sheets = pages.paper.pageCount
        verify(findChild(window.overlay ?? window.contentItem.parent, "paperPages").activeFocus)
        pages.paper.forArborist = true
        compare(pages.paper.pageCount, 1)
        pages.paper.forArborist = false
        compare(pages.paper.pageCount, sheets)
        const file = pages.file("work.pdf")
        verify(pages.paper.save(file))
        verify(pages.paper.said.indexOf("work.pdf") >= 0)
        verify(!pages.paper.save("file:///no/such/folder/work.pdf"))
        verify(pages.paper.said.indexOf("could not be written") >= 0)
        keyClick(Qt.Key_Escape)
    }
}
