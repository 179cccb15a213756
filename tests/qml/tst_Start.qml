import QtQuick
import QtTest
import Underbough.App
import Underbough.Test
import Underbough.Ui

/// A garden from nothing: started, planted and drawn on with mouse and keys.
TestCase {
    id: testCase
    name: "Start"
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
        paper: pages.paper
        underlay: pages.underlay
        grounds: pages.grounds
        why: pages.why
        offers: pages.offers
        stages: pages.stages
        newGarden: pages.newGarden
        addTree: pages.addTree
        planEditor: pages.planEditor
        thing: pages.thing
        tree: pages.tree
        limb: pages.limb
        limbShape: pages.limbShape
    }

    function child(name) {
        const item = findChild(window.contentItem, name) ?? findChild(window.contentItem.parent, name)
        verify(item, name)
        return item
    }
    function type(text) {
        for (const letter of text)
            keyClick(letter)
    }
    function startGarden() {
        pages.planEditor.editing = false
        keyClick(Qt.Key_N, Qt.ControlModifier)
        tryVerify(() => window.activeFocusItem && window.activeFocusItem.objectName === "newNameInput")
        type("plot")
        keyClick(Qt.Key_Tab)
        compare(window.activeFocusItem.objectName, "newCityInput")
        type("zuri")
        tryCompare(child("newCityList"), "visible", true)
        keyClick(Qt.Key_Return)
        verify(pages.newGarden.clockText.indexOf("Zurich") >= 0)
        mouseClick(child("sheetDone"))
        tryCompare(pages.garden, "gardenName", "plot")
        tryVerify(() => !findChild(window, "newSheet") || !findChild(window, "newSheet").visible)
    }
    function addTree() {
        mouseClick(child("firstTreeButton"))
        tryVerify(() => window.activeFocusItem && window.activeFocusItem.objectName === "treeKindInput")
        type("norway ma")
        keyClick(Qt.Key_Return)
        tryCompare(pages.addTree, "species", "Acer platanoides")
        tryCompare(window.activeFocusItem, "objectName", "treeStemInput")
        type("120")
        verify(pages.addTree.usualHeight.length > 0)
        keyClick(Qt.Key_Return)
        tryCompare(pages.garden.trees, "length", 1)
    }
    /// The plan once it has taken the room of the side view.
    function largePlan() {
        const plan = child("planDrawing")
        tryVerify(() => plan.height > 260)
        waitForRendering(plan)
        return plan
    }
    function init() {
        window.requestActivate()
        pages.restart()
    }

    function test_01_aNewGardenSaysWhatToDoFirst() {
        startGarden()
        compare(pages.garden.trees.length, 0)
        verify(child("firstTreeButton").visible)
        verify(!pages.garden.hasFile)
    }

    function test_02_aTreeIsAddedWithTheKeyboardAlone() {
        startGarden()
        addTree()
        verify(pages.limbCount() > 12)
        compare(pages.garden.undoName, "add Norway maple")
        tryCompare(pages.garden, "isBusy", false, 60000)
        verify(pages.answers.stormHeadline.length > 0)
    }

    function test_03_whatIsMissingIsSaidAndTheButtonWaits() {
        startGarden()
        mouseClick(child("addTreeButton"))
        tryVerify(() => window.activeFocusItem && window.activeFocusItem.objectName === "treeKindInput")
        verify(pages.addTree.problem.length > 0)
        keyClick(Qt.Key_Escape)
        compare(pages.garden.trees.length, 0)
    }

    function test_04_aPathIsDrawnInOneDragAndSized() {
        startGarden()
        addTree()
        mouseClick(child("drawPlanButton"))
        verify(pages.planEditor.editing)
        const plan = largePlan()
        mouseClick(child("planTool0"))
        mousePress(plan, 100, 120)
        mouseMove(plan, 200, 140)
        mouseMove(plan, 300, 170)
        mouseRelease(plan, 300, 170)
        compare(pages.planEditor.things.length, 2)
        verify(pages.thing.isStrip)
        const width = child("thingWidthInput")
        mouseClick(width)
        width.selectAll()
        type("1.2")
        keyClick(Qt.Key_Return)
        verify(pages.thing.width.indexOf("1.2") === 0)
        mouseClick(child("drawPlanButton"))
        verify(!pages.planEditor.editing)
    }

    function test_05_aHedgeIsDrawnAndMovedByKeyboard() {
        startGarden()
        pages.planEditor.editing = true
        child("planTool1").forceActiveFocus()
        keyClick(Qt.Key_Space)
        compare(pages.planEditor.tool, 1)
        keyClick(Qt.Key_Return)
        compare(pages.planEditor.things.length, 1)
        const handle = child("planHandle_hedge-1_-1")
        handle.forceActiveFocus()
        const before = pages.thing.east
        keyClick(Qt.Key_Right, Qt.ShiftModifier)
        verify(pages.thing.east !== before)
        keyClick(Qt.Key_Delete)
        compare(pages.planEditor.things.length, 0)
        keyClick(Qt.Key_Z, Qt.ControlModifier)
        compare(pages.planEditor.things.length, 1)
        pages.planEditor.editing = false
    }

    function test_05_aTreeNextDoorIsDrawnSizedAndNamed() {
        startGarden()
        pages.planEditor.editing = true
        const plan = largePlan()
        mouseClick(child("planTool7"))
        mousePress(plan, 120, 120)
        mouseMove(plan, 180, 160)
        mouseMove(plan, 240, 200)
        mouseRelease(plan, 240, 200)
        compare(pages.planEditor.things.length, 1)
        verify(pages.thing.isNeighbour)
        for (const [name, typed] of [["thingHeight", "11 m"], ["thingCrownBase", "2 m"], ["thingStem", "0.35 m"]]) {
            const field = child(name + "Input")
            verify(field.visible, name)
            mouseClick(field)
            field.selectAll()
            type(typed)
            keyClick(Qt.Key_Return)
        }
        verify(pages.thing.height.indexOf("11") === 0)
        verify(pages.thing.crownBase.indexOf("2") === 0)
        verify(pages.thing.stem.indexOf("35") === 0)
        const handle = child("planHandle_neighbour-1_-1")
        handle.forceActiveFocus()
        const before = pages.thing.east
        keyClick(Qt.Key_Right, Qt.ShiftModifier)
        verify(pages.thing.east !== before)
        keyClick(Qt.Key_Delete)
        compare(pages.planEditor.things.length, 0)
        pages.planEditor.editing = false
    }

    function test_06_cornersAreClickedOneByOne() {
        startGarden()
        pages.planEditor.editing = true
        const plan = largePlan()
        mouseClick(child("planTool2"))
        mouseClick(plan, 100, 100)
        mouseClick(plan, 200, 100)
        mouseClick(plan, 200, 180)
        keyClick(Qt.Key_Backspace)
        verify(!pages.planEditor.canFinish)
        mouseClick(plan, 220, 180)
        mouseClick(plan, 100, 100)
        compare(pages.planEditor.things.length, 1)
        pages.planEditor.editing = false
    }

    function test_20_whoIsNewIsShownRoundWithTheKeyboardAlone() {
        pages.restart()
        tryCompare(pages.garden, "isBusy", false, 60000)
        keyClick(Qt.Key_F1)
        const walk = findChild(window, "walk")
        tryCompare(walk, "opened", true)
        const ring = findChild(window, "walkRing") || child("walkRing")
        const rings = []
        for (let i = 0; i < walk.steps.length; ++i) {
            tryCompare(window.activeFocusItem, "objectName", "walkNext")
            verify(walk.titles[i].length > 0)
            compare(child("walkText").text, walk.steps[i])
            wait(250)
            const what = walk.titles[i] + ": " + walk.spot
            verify(ring.visible && ring.Window.window === window && ring.width > 40 && ring.height > 20, what)
            verify(ring.x > -20 && ring.x + ring.width < window.width + 20, what)
            verify(ring.y > -20 && ring.y < window.height, what)
            verify(walk.y >= 0 && walk.y + walk.height <= window.height, what)
            verify(!rings.includes(walk.spot.toString()), what)
            rings.push(walk.spot.toString())
            if (!walk.isLast)
                keyClick(Qt.Key_Space)
        }
        keyClick(Qt.Key_Escape)
        tryCompare(walk, "visible", false)
        keyClick(Qt.Key_F1)
        tryCompare(walk, "opened", true)
        compare(walk.step, 0)
        walk.go(walk.steps.length - 1)
        keyClick(Qt.Key_Space)
        tryVerify(() => window.activeFocusItem && window.activeFocusItem.objectName === "newNameInput")
        findChild(window, "newSheet").close()
    }
}
