import QtQuick
import QtTest
import Underbough.App
import Underbough.Test
import Underbough.Ui

/// The whole window over the small garden, with fingers and with a pen: nothing here is a mouse, and
/// nothing is pointed at before it is pressed.
TestCase {
    id: testCase
    name: "Touch"
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

    /// A finger's breadth off what is aimed at.
    readonly property real clumsy: 18

    function child(name) {
        const item = findChild(window.contentItem, name) ?? findChild(window.contentItem.parent, name)
        verify(item, name)
        return item
    }
    function init() {
        pages.restart()
        pages.planEditor.editing = false
        window.requestActivate()
        tryCompare(pages.garden, "isBusy", false, 60000)
    }
    function drawn(limb, station) {
        const at = pages.station(limb, station)
        return child("sideDrawing").mapToItem(window.contentItem, at.x, at.y)
    }
    function middle(item) {
        return item.mapToItem(window.contentItem, item.width / 2, item.height / 2)
    }
    function stroke(from, to) {
        const finger = touchEvent(window.contentItem)
        finger.press(1, window.contentItem, from.x, from.y).commit()
        for (let i = 1; i <= 8; ++i) {
            wait(10)
            finger.move(1, window.contentItem, from.x + (to.x - from.x) * i / 8, from.y + (to.y - from.y) * i / 8).commit()
        }
        finger.release(1, window.contentItem, to.x, to.y).commit()
    }
    function tap(at) {
        stroke(at, at)
    }
    function tapOn(name) {
        tap(middle(child(name)))
    }
    /// Two fingers, from `apart` to `apart * times` pixels from each other, whose middle goes along.
    function pinch(at, apart, times, along) {
        const fingers = touchEvent(window.contentItem)
        const place = (i, share) => Qt.point(at.x + along * share + (i === 1 ? -1 : 1) * apart * (1 + (times - 1) * share) / 2, at.y)
        for (let step = 0; step <= 12; ++step) {
            for (const i of [1, 2]) {
                const p = place(i, step / 12)
                step === 0 ? fingers.press(i, window.contentItem, p.x, p.y) : fingers.move(i, window.contentItem, p.x, p.y)
            }
            fingers.commit()
            wait(10)
        }
        for (const i of [1, 2])
            fingers.release(i, window.contentItem, place(i, 1).x, place(i, 1).y)
        fingers.commit()
    }

    function test_aFingerDrawsALimbInOneStroke() {
        tapOn("drawButton")
        verify(child("drawButton").checked)
        const stem = drawn("stem", 1)
        stroke(Qt.point(stem.x, stem.y - 40), Qt.point(stem.x - 120, stem.y - 110))
        compare(pages.limbCount(), 3)
        compare(pages.garden.undoName, "draw a limb")
        tapOn("undoButton")
        compare(pages.limbCount(), 2)
    }

    function test_aFingerBesideAStationDragsIt() {
        const before = pages.height_m("bough", 2)
        const from = drawn("bough", 2)
        stroke(Qt.point(from.x + clumsy, from.y), Qt.point(from.x + clumsy + 20, from.y - 60))
        verify(pages.height_m("bough", 2) > before + 0.3)
        compare(pages.garden.undoName, "move path bough")
    }

    function test_theNearerOfTwoHandlesIsTaken() {
        pages.side.chooseLimb("bough")
        for (let i = 0; i < 12; ++i)
            pages.side.zoomMiddle(0.8) // until they lie over each other
        pages.side.zoomMiddle(1.25)
        const near = drawn("bough", 2)
        const far = drawn("bough", 1)
        verify(Math.hypot(near.x - far.x, near.y - far.y) < 40)
        const before = [pages.height_m("bough", 1), pages.height_m("bough", 2)]
        const right = near.x > far.x ? 6 : -6
        const press = touchEvent(window.contentItem)
        press.press(1, window.contentItem, near.x + right, near.y).commit()
        compare(window.activeFocusItem.station, 2)
        press.release(1, window.contentItem, near.x + right, near.y).commit()
        compare(pages.height_m("bough", 1), before[0])
        pages.side.fit()
    }

    function test_aMouseIsMorePreciseThanAFinger() {
        const before = pages.height_m("bough", 2)
        const from = drawn("bough", 2)
        mousePress(window.contentItem, from.x + clumsy, from.y)
        mouseMove(window.contentItem, from.x + clumsy, from.y - 40)
        mouseRelease(window.contentItem, from.x + clumsy, from.y - 60)
        compare(pages.height_m("bough", 2), before)
        pages.side.fit()
    }

    function test_thicknessLeafAndShootsFollowAFinger_data() {
        return [
            { tag: "thickness", handle: "shapeHandle0", right: -20, down: -20, name: "change the girth of path bough" },
            { tag: "leaf start", handle: "shapeHandle1", right: 30, down: 0, name: "change the leaf of path bough" },
            { tag: "leaf width", handle: "shapeHandle2", right: 0, down: -40, name: "change the leaf of path bough" },
            { tag: "shoots", handle: "shapeHandle3", right: 0, down: 40, name: "change the hanging shoots of path bough" }]
    }
    function test_thicknessLeafAndShootsFollowAFinger(row) {
        tap(Qt.point((drawn("bough", 1).x + drawn("bough", 2).x) / 2, (drawn("bough", 1).y + drawn("bough", 2).y) / 2))
        compare(pages.side.chosenLimb, "bough")
        tryVerify(() => findChild(window.contentItem, row.handle) !== null)
        const from = middle(child(row.handle))
        stroke(from, Qt.point(from.x + row.right, from.y + row.down))
        compare(pages.garden.undoName, row.name)
    }

    function test_aFingerWalksRoundTheTree() {
        const bearing = pages.side.bearing
        const eye = middle(child("eye"))
        stroke(Qt.point(eye.x + clumsy / 2, eye.y), Qt.point(eye.x + 60, eye.y - 60))
        verify(pages.side.bearing !== bearing)
        const slide = child("walkSlide")
        const at = slide.mapToItem(window.contentItem, slide.width * 0.8, slide.height / 2)
        tap(at)
        verify(pages.side.bearing > 180)
    }

    function test_aFingerSetsGustDayAndHour_data() {
        return [{ tag: "gust", slide: "gustSlide" }, { tag: "day", slide: "daySlide" }, { tag: "hour", slide: "hourSlide" }]
    }
    function test_aFingerSetsGustDayAndHour(row) {
        const slide = child(row.slide)
        const before = slide.value
        const from = slide.mapToItem(window.contentItem, slide.leftPadding + slide.visualPosition * (slide.availableWidth - 20) + 10, slide.height / 2)
        const there = slide.visualPosition > 0.5 ? -60 : 60
        stroke(from, Qt.point(from.x + there, from.y))
        verify(Math.abs(slide.value - before) > 0.05 * (slide.to - slide.from))
        tryCompare(pages.garden, "isBusy", false, 60000)
    }

    function test_aTapWithTheSawTriesACut() {
        tapOn("sawButton")
        const foot = drawn("bough", 0)
        tap(Qt.point(foot.x + 6, foot.y))
        tryCompare(pages.work.trial, "count", 1)
        tryCompare(pages.work.trial, "isBusy", false, 10000)
        verify(!pages.garden.isDirty)
        tapOn("sawButton")
        pages.work.trial.clear()
    }

    function test_twoFingersZoomAndMoveTheSideView() {
        verify(pages.side.isFitted)
        const drawing = child("sideDrawing")
        const before = Math.abs(drawn("stem", 2).y - drawn("stem", 1).y)
        pinch(drawing.mapToItem(window.contentItem, drawing.width * 0.2, drawing.height * 0.2), 60, 3, 0)
        verify(!pages.side.isFitted)
        const larger = Math.abs(drawn("stem", 2).y - drawn("stem", 1).y) / before
        verify(larger > 1.4, larger)
        const x = drawn("stem", 1).x
        pinch(drawing.mapToItem(window.contentItem, drawing.width * 0.2, drawing.height * 0.2), 120, 1, 70)
        verify(drawn("stem", 1).x > x + 30, x + " to " + drawn("stem", 1).x)
        tapOn("sideFit")
        verify(pages.side.isFitted)
    }

    function test_twoFingersZoomThePlan() {
        const plan = child("planDrawing")
        verify(pages.plan.isFitted)
        pinch(plan.mapToItem(window.contentItem, plan.width * 0.3, plan.height * 0.6), 50, 2, 10)
        verify(!pages.plan.isFitted)
        tapOn("planFit")
    }

    function test_aFingerDrawsAndDragsOnThePlan() {
        tapOn("drawPlanButton")
        verify(pages.planEditor.editing)
        const plan = child("planDrawing")
        tryVerify(() => plan.height > 260)
        waitForRendering(plan)
        const place = (x, y) => plan.mapToItem(window.contentItem, x, y)
        const things = pages.planEditor.things.length
        tapOn("planTool1")
        stroke(place(60, 80), place(160, 150))
        compare(pages.planEditor.things.length, things + 1)
        const named = pages.thing.name
        const handle = child("planHandle_hedge-1_-1")
        const east = pages.thing.east
        const at = middle(handle)
        stroke(Qt.point(at.x + clumsy / 2, at.y), Qt.point(at.x + 60, at.y + 20))
        verify(pages.thing.east !== east)
        compare(pages.thing.name, named)
        const corner = middle(child("planHandle_hedge-1_0"))
        stroke(corner, Qt.point(corner.x - 15, corner.y - 15))
        const tree = middle(child("planHandle_maple_-1"))
        const stood = pages.thing.east
        tap(tree)
        stroke(middle(child("planHandle_maple_-1")), Qt.point(tree.x + 50, tree.y))
        verify(pages.thing.east !== stood)
        tapOn("drawPlanButton")
    }

    function test_aPenDrawsBendsAndCuts() {
        mouseClick(child("drawButton"))
        const stem = pages.station("stem", 1)
        const drawing = child("sideDrawing")
        pages.pen(drawing, [Qt.point(stem.x, stem.y - 40), Qt.point(stem.x - 60, stem.y - 80), Qt.point(stem.x - 120, stem.y - 110)])
        compare(pages.limbCount(), 3)
        const tip = pages.station("bough", 2)
        const before = pages.height_m("bough", 2)
        pages.pen(drawing, [tip, Qt.point(tip.x + 10, tip.y - 30), Qt.point(tip.x + 20, tip.y - 60)])
        verify(pages.height_m("bough", 2) > before + 0.3)
        const slide = child("gustSlide")
        const gust = pages.conditions.gust
        pages.pen(slide, [Qt.point(slide.width * 0.2, slide.height / 2), Qt.point(slide.width * 0.15, slide.height / 2)])
        verify(pages.conditions.gust !== gust)
    }

    // Published: W3C, Web Content Accessibility Guidelines 2.2, success criterion 2.5.8: 24 x 24 pixels
    // at least. Handles that lie close have 44 (2.5.5).
    function test_everythingThatIsPressedIsBigEnoughForAFinger() {
        const small = []
        const look = (item) => {
            if (!item.visible)
                return
            if (item.activeFocusOnTab && item.enabled && item.Accessible && item.Accessible.focusable
                    && (item.width < 24 || item.height < 24))
                small.push((item.objectName || item) + " " + item.width + " x " + item.height)
            for (let i = 0; i < item.children.length; ++i)
                look(item.children[i])
        }
        pages.side.chooseLimb("bough")
        look(window.contentItem)
        compare(small.join(", "), "")
        compare(child("handle-bough-2").width, Theme.finger)
        verify(Theme.finger >= 44)
    }
}
