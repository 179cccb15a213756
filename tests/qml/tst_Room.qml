import QtQuick
import QtQuick.Controls.Basic
import QtTest
import Underbough.App
import Underbough.Test
import Underbough.Ui

/// A small screen, or letters of two and three times the size on a larger one: every page keeps what
/// is on it within its width, one beside the other and not one over the other, and brings what the
/// keyboard comes to into sight. And every control of every page has a name for a screen reader; its role is its kind's.
TestCase {
    id: testCase
    name: "Room"
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
        const item = findChild(window, name) || findChild(window.contentItem, name)
        verify(item, name)
        return item
    }
    function init() {
        pages.restart()
        window.requestActivate()
        tryCompare(pages.garden, "isBusy", false, 60000)
    }
    function cleanup() {
        window.showsDiary = false
        window.showsRound = false
        pages.planEditor.editing = false
        pages.diary.form.close()
    }
    function resize(size) {
        window.width = size[0]
        window.height = size[1]
        tryCompare(window.contentItem, "width", size[0])
        waitForRendering(window.contentItem)
        wait(50)
    }

    /// Every control that is to be seen within `item`.
    function controls(item, found) {
        if (!item.visible || item.width <= 0)
            return found
        if (item instanceof AbstractButton || item instanceof TextField || item instanceof ComboBox
                || item instanceof Slider)
            found.push(item)
        else if (item instanceof LimbHandle || item instanceof ShapeHandle || item instanceof PlanHandle)
            return found // they stand where the drawing has them
        for (let i = 0; i < item.children.length; ++i)
            testCase.controls(item.children[i], found)
        return found
    }
    function told(item) {
        return item.objectName || item.text || item.Accessible.name || item.toString()
    }
    function isWithin(item, other) {
        for (let up = item.parent; up; up = up.parent)
            if (up === other)
                return true
        return false
    }
    function checkPlaces(root, width, page) {
        const all = testCase.controls(root, [])
        verify(all.length > 0, page)
        const places = all.map((item) => item.mapToItem(window.contentItem, 0, 0, item.width, item.height))
        for (let i = 0; i < all.length; ++i) {
            verify(places[i].x >= -0.5 && places[i].x + places[i].width <= width + 0.5,
                   page + ": " + testCase.told(all[i]) + " from " + places[i].x + " to "
                   + (places[i].x + places[i].width) + " of " + width)
            for (let j = i + 1; j < all.length; ++j) {
                const across = Math.min(places[i].x + places[i].width, places[j].x + places[j].width)
                             - Math.max(places[i].x, places[j].x)
                const down = Math.min(places[i].y + places[i].height, places[j].y + places[j].height)
                           - Math.max(places[i].y, places[j].y)
                verify(across < 1 || down < 1 || testCase.isWithin(all[i], all[j]) || testCase.isWithin(all[j], all[i]),
                       page + ": " + testCase.told(all[i]) + " over " + testCase.told(all[j]))
            }
        }
    }
    function checkNames(root, page) {
        for (const item of testCase.controls(root, []))
            verify(item.Accessible.name.length > 0 || testCase.isPartOfAControl(item),
                   page + ": " + testCase.told(item) + " has no name")
    }
    /// The line of a box that can be written in is the box for a screen reader too.
    function isPartOfAControl(item) {
        return item.parent.displayText !== undefined
    }
    /// Tab, all the way round: whatever has the keyboard is in sight.
    function checkTabs(page) {
        const low = findChild(window.contentItem, "cautionsText").mapToItem(window.contentItem, 0, 0).y
        for (let i = 0; i < 140; ++i) {
            keyClick(Qt.Key_Tab)
            const item = window.activeFocusItem
            if (!item || item === window.contentItem)
                continue
            const middle = item.mapToItem(window.contentItem, item.width / 2, item.height / 2)
            const isOver = item.height > 200 || !(item as Control || item as TextField)
            verify(isOver || middle.y > 0 && middle.y < window.height, page + ": " + testCase.told(item) + " at "
                   + middle.y + " of " + window.height)
            verify(isOver || testCase.isWithin(item, child("cautionsButton").parent)
                   || item === child("cautionsButton") || item.objectName === "problemButton" || middle.y < low + 1,
                   page + ": " + testCase.told(item) + " under the cautions")
        }
    }

    readonly property var sizes: [
        { tag: "1920 x 1080 at three times the size", size: [640, 360] },
        { tag: "1366 x 768 at twice the size", size: [683, 384] },
        { tag: "1920 x 1080 at twice the size", size: [960, 540] },
        { tag: "a small laptop", size: [1280, 720] },
        { tag: "as it first opens", size: [1440, 920] },
    ]
    readonly property var sheets: ["newSheet", "treeSheet", "treeFacts", "gardenFactsSheet", "limbFactsSheet"]

    function test_1_eachPageKeepsWithinItsWidth_data() { return testCase.sizes }
    function test_1_eachPageKeepsWithinItsWidth(row) {
        testCase.resize(row.size)
        pages.side.chooseLimb("bough")
        const look = (page) => {
            waitForRendering(window.contentItem)
            wait(30)
            testCase.checkPlaces(window.contentItem, row.size[0], page)
            testCase.checkNames(window.contentItem, page)
        }
        look("drawings")
        pages.planEditor.editing = true
        look("plan")
        pages.planEditor.choose(0)
        look("a thing on the plan")
        pages.planEditor.editing = false
        window.showsRound = true
        look("all round")
        window.showsRound = false
        window.showsDiary = true
        look("diary")
        pages.diary.form.start()
        look("a visit")
        pages.diary.form.close()
        window.showsDiary = false
        pages.why.ask("limb:bough")
        tryCompare(pages.why, "isOpen", true)
        look("why")
        pages.why.close()
    }

    function test_2_eachSheetKeepsWithinTheWindow_data() { return testCase.sizes }
    function test_2_eachSheetKeepsWithinTheWindow(row) {
        testCase.resize(row.size)
        pages.side.chooseLimb("bough")
        for (const name of testCase.sheets) {
            const sheet = testCase.child(name)
            sheet.open()
            tryCompare(sheet, "opened", true)
            wait(30)
            verify(sheet.x >= 0 && sheet.x + sheet.width <= row.size[0], name)
            verify(sheet.y >= 0 && sheet.y + sheet.height <= row.size[1], name + " " + sheet.height)
            const page = sheet.contentItem.parent
            testCase.checkPlaces(page, row.size[0], name)
            testCase.checkNames(page, name)
            const done = findChild(page, "sheetDone").mapToItem(window.contentItem, 0, 0)
            verify(done.y + 34 <= row.size[1], name + ": the button at its end is cut off")
            for (let i = 0; i < 40; ++i) {
                keyClick(Qt.Key_Tab)
                const item = window.activeFocusItem
                const at = item.mapToItem(window.contentItem, 0, 0)
                verify(at.y >= 0 && at.y + item.height <= row.size[1], name + ": " + testCase.told(item))
            }
            sheet.close()
            tryCompare(sheet, "visible", false)
        }
    }

    function test_3_whatTheKeyboardComesToIsInSight_data() { return testCase.sizes }
    function test_3_whatTheKeyboardComesToIsInSight(row) {
        testCase.resize(row.size)
        testCase.checkTabs("drawings")
        window.showsDiary = true
        testCase.checkTabs("diary")
        pages.diary.form.start()
        waitForRendering(window.contentItem)
        wait(100)
        testCase.checkTabs("a visit")
    }

    function test_4_aRefusalIsToldOnTheSheetItself() {
        testCase.resize([1440, 920])
        const sheet = testCase.child("gardenFactsSheet")
        sheet.open()
        tryCompare(sheet, "opened", true)
        const gust = findChild(sheet.contentItem, "groundsGustInput")
        gust.forceActiveFocus()
        gust.text = "strong"
        keyClick(Qt.Key_Tab)
        const told = findChild(sheet.footer, "sheetProblem")
        verify(pages.garden.problem.length > 0)
        compare(told.text, pages.garden.problem)
        sheet.close()
        tryCompare(sheet, "visible", false)
        sheet.open()
        tryCompare(sheet, "opened", true)
        compare(told.text, "") // no matter of this time
        sheet.close()
        tryCompare(sheet, "visible", false)
        pages.garden.dismissProblem()
    }

    function test_5_aRefusalMovesNothingUnderTheHand() {
        testCase.resize([1440, 920])
        const drawing = testCase.child("sideDrawing")
        const before = drawing.mapToItem(window.contentItem, 0, 0, drawing.width, drawing.height)
        verify(!pages.side.endStroke())
        pages.side.beginStroke(1, 1)
        pages.side.endStroke()
        pages.thing.height = "high"
        tryVerify(() => pages.garden.problem.length > 0)
        waitForRendering(window.contentItem)
        const after = drawing.mapToItem(window.contentItem, 0, 0, drawing.width, drawing.height)
        compare(after, before)
        verify(testCase.child("problemText").visible)
        pages.garden.dismissProblem()
        pages.side.chooseLimb("bough") // nor does a limb's own line
        verify(pages.side.limbLoad.length > 0)
        waitForRendering(window.contentItem)
        compare(drawing.mapToItem(window.contentItem, 0, 0, drawing.width, drawing.height), before)
    }

    function test_6_theWheelRollsASmallWindowAndZoomsWithCtrl() {
        testCase.resize([640, 360])
        const room = testCase.child("room")
        const drawing = testCase.child("sideDrawing")
        room.show(drawing)
        const rolled = room.contentItem.contentY
        const fitted = pages.side.isFitted
        mouseWheel(drawing, drawing.width / 2, 40, 0, -120)
        tryVerify(() => room.contentItem.contentY > rolled)
        compare(pages.side.isFitted, fitted)
        room.show(drawing)
        mouseWheel(drawing, drawing.width / 2, 100, 0, 120, Qt.NoButton, Qt.ControlModifier)
        tryCompare(pages.side, "isFitted", false)
        pages.side.fit()
    }
}
