pragma ComponentBehavior: Bound
import QtQuick
import QtQuick3D
import Underbough.App
import Underbough.Graphics
import Underbough.Ui

/// The garden in three dimensions under the sun of the day and hour. Loaded only where it can be
/// drawn: nothing else in the window needs Quick 3D.
View3D {
    id: view

    required property RoundViewModel round

    camera: gardener
    environment: SceneEnvironment {
        backgroundMode: SceneEnvironment.Color
        clearColor: Theme.paper
        antialiasingMode: SceneEnvironment.MSAA
        antialiasingQuality: SceneEnvironment.High
    }

    PerspectiveCamera {
        id: gardener
        position: view.round.eye
        eulerRotation: view.round.look
        fieldOfView: view.round.fieldOfView
        clipNear: view.round.nearest
        clipFar: view.round.farthest
    }
    DirectionalLight { // the sky: what stands in shadow is still seen, and at night too
        eulerRotation.x: -90
        ambientColor: "#989ea6"
        brightness: 0.1
    }
    DirectionalLight {
        id: sun
        eulerRotation: view.round.sunbeam
        color: "#fff6e6"
        brightness: 0.7 * view.round.sunlight
        castsShadow: view.round.sunlight > 0
        shadowFactor: 80
        shadowMapQuality: Light.ShadowMapQualityVeryHigh
        shadowMapFar: view.round.farthest
        shadowBias: 0.01
        shadowFilter: 4
    }
    CustomMaterial {
        id: unseen
        vertexShader: "shade.vert"
    }
    Repeater3D {
        model: view.round.parts

        Model {
            id: part

            required property var shape
            required property color colour
            required property bool castsShadow
            required property bool takesShadow
            required property bool onlyShadow

            castsShadows: part.castsShadow
            receivesShadows: part.takesShadow
            geometry: SolidGeometry { solid: part.shape }
            materials: [part.onlyShadow ? unseen : seen]

            PrincipledMaterial {
                id: seen
                baseColor: part.colour
                alphaMode: part.colour.a < 1 ? PrincipledMaterial.Blend : PrincipledMaterial.Opaque
                roughness: 1
                specularAmount: 0
            }
        }
    }
}
