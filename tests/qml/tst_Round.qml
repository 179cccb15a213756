import QtQuick
import QtTest
import Underbough.App
import Underbough.Test
import Underbough.Ui

/// The page that shows the tree in three dimensions. The tests draw without a graphics card, as a
/// poor machine does: the page then says so in a sentence, and all but its picture works.
TestCase {
    id: testCase
    name: "Round"
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
        const item = findChild(window.contentItem, name)
        verify(item, name)
        return item
    }
    function init() {
        pages.restart()
        window.showsRound = false
        window.requestActivate()
        tryCompare(pages.garden, "isBusy", false, 60000)
    }
    function cleanupTestCase() {
        window.showsRound = false
    }

    function test_01_isReachedByAButtonAndLeftByTheSame() {
        compare(pages.round.isShown, false)
        verify(!findChild(window.contentItem, "roundPage")) // nothing of it is loaded before
        mouseClick(child("roundButton"))
        tryVerify(() => findChild(window.contentItem, "roundPage"))
        compare(pages.round.isShown, true)
        compare(child("sideDrawing").visible, false)
        tryCompare(child("roundPicture"), "activeFocus", true)
        mouseClick(child("sideButton"))
        tryCompare(child("sideDrawing"), "visible", true)
        compare(pages.round.isShown, false)
        compare(child("roundButton").activeFocus, true)
    }

    function test_02_withoutAGraphicsCardItSaysSo() {
        mouseClick(child("roundButton"))
        tryVerify(() => findChild(window.contentItem, "roundPage"))
        compare(child("roundPage").canDraw, false)
        const missing = child("roundMissing")
        compare(missing.visible, true)
        verify(missing.text.length > 0)
        compare(missing.truncated, false)
        verify(missing.contentHeight <= missing.height)
    }

    function test_03_theLimbChosenIsTheSideViews() {
        pages.side.chooseLimb("bough")
        mouseClick(child("roundButton"))
        tryVerify(() => findChild(window.contentItem, "roundPage"))
        const names = () => findChild(child("roundPage"), "limbName").text
        compare(names(), "path bough")
        tryCompare(child("roundPicture"), "activeFocus", true)
        keyClick(Qt.Key_PageDown)
        compare(pages.side.chosenLimb, "stem")
        keyClick(Qt.Key_PageUp)
        compare(pages.side.chosenLimb, "bough")
        mouseClick(child("sideButton"))
        compare(pages.side.chosenLimb, "bough")
    }

    function test_04_allOfItByKeyboard() {
        child("roundButton").forceActiveFocus()
        keyClick(Qt.Key_Space)
        tryVerify(() => findChild(window.contentItem, "roundPage"))
        tryCompare(child("roundPicture"), "activeFocus", true)
        const bearing = pages.side.bearing
        keyClick(Qt.Key_Right)
        compare(pages.side.bearing, (bearing + 355) % 360)
        keyClick(Qt.Key_Left)
        compare(pages.side.bearing, bearing)
        const high = pages.round.eye.y
        keyClick(Qt.Key_Up)
        verify(pages.round.eye.y > high)
        keyClick(Qt.Key_Plus)
        compare(pages.round.isFitted, false)
        keyClick(Qt.Key_0)
        compare(pages.round.isFitted, true)
        let guard = 0
        while (window.activeFocusItem !== child("sideButton") && ++guard < 120)
            keyClick(Qt.Key_Tab)
        verify(guard < 120)
        keyClick(Qt.Key_Space)
        compare(window.showsRound, false)
    }

    function test_05_eachPartHasANameForAScreenReader() {
        mouseClick(child("roundButton"))
        tryVerify(() => findChild(window.contentItem, "roundPage"))
        const picture = child("roundPicture")
        compare(picture.Accessible.role, Accessible.Graphic)
        verify(picture.Accessible.name.length > 0)
        verify(picture.Accessible.description.indexOf("the maple") >= 0)
        for (const name of ["sideButton", "roundSawButton", "fallingButton", "roundNowButton", "roundAfterButton"])
            verify(child(name).Accessible.name.length > 0)
    }
}
