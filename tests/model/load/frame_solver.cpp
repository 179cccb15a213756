#include "tests/model/load/frame_solver.hpp"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iomanip>
#include <sstream>
#include <stdexcept>

namespace model::load {
namespace {

// ccx 2.20 has one true beam element, the user element U1. In the plane of its third axis its
// stiffness has a wrong sign (element matrix entry 3-9), so each bar is made of two that lie on
// top of each other, each stiff in the plane of its second axis only, the two planes square.
// The section: I 1e-5 m4 in each plane; half of the torsion each; an area so large that shear and
// axial strains vanish, which leaves the moments of a frame that isn't braced as they are.
constexpr const char* kHalfSection = "50.,1.E-5,0.,0.,1.";

struct Axes {
    Vec3 along{};
    std::array<Vec3, 2> second{};
};

Axes axes(const Frame& frame, const Bar& bar)
{
    const Vec3 run = frame.nodes_m[bar.to] - frame.nodes_m[bar.from];
    Axes result;
    result.along = (1.0 / norm(run)) * run;
    const Vec3 aside = std::abs(result.along.z) < 0.9 ? Vec3{0.0, 0.0, 1.0} : Vec3{1.0, 0.0, 0.0};
    const Vec3 first = cross(result.along, aside);
    result.second[0] = (1.0 / norm(first)) * first;
    result.second[1] = cross(result.along, result.second[0]);
    return result;
}

std::string triple(Vec3 v)
{
    std::ostringstream text;
    text << std::scientific << std::setprecision(12) << v.x << "," << v.y << "," << v.z;
    return text.str();
}

std::string inputDeck(const Frame& frame)
{
    std::ostringstream deck;
    deck << std::scientific << std::setprecision(12) << "*NODE,NSET=NALL\n";
    for (std::size_t i = 0; i < frame.nodes_m.size(); ++i)
        deck << i + 1 << "," << triple(frame.nodes_m[i]) << "\n";
    deck << "*USER ELEMENT,TYPE=U1,NODES=2,INTEGRATIONPOINTS=2,MAXDOF=6\n";
    for (std::size_t i = 0; i < frame.bars.size(); ++i)
        for (std::size_t half = 0; half < 2; ++half)
            deck << "*ELEMENT,TYPE=U1,ELSET=E" << 2 * i + half + 1 << "\n"
                 << 2 * i + half + 1 << "," << frame.bars[i].from + 1 << "," << frame.bars[i].to + 1
                 << "\n";
    deck << "*ELSET,ELSET=EALL,GENERATE\n1," << 2 * frame.bars.size() << "\n"
         << "*BOUNDARY\n1,1,6\n*MATERIAL,NAME=WOOD\n*ELASTIC\n1.E10,0.3\n";
    for (std::size_t i = 0; i < frame.bars.size(); ++i)
        for (std::size_t half = 0; half < 2; ++half)
            deck << "*BEAM SECTION,ELSET=E" << 2 * i + half + 1
                 << ",MATERIAL=WOOD,SECTION=GENERAL\n"
                 << kHalfSection << "\n"
                 << triple(axes(frame, frame.bars[i]).second[half]) << "\n";
    deck << "*STEP\n*STATIC\n*CLOAD\n";
    for (std::size_t i = 0; i < frame.loads.size(); ++i) {
        const auto& load = frame.loads[i];
        const double parts[] = {load.force_N.x,   load.force_N.y,   load.force_N.z,
                                load.moment_Nm.x, load.moment_Nm.y, load.moment_Nm.z};
        for (int part = 0; part < 6; ++part)
            deck << i + 1 << "," << part + 1 << "," << parts[part] << "\n";
    }
    deck << "*EL PRINT,ELSET=EALL\nS\n*END STEP\n";
    return deck.str();
}

/// What ccx prints for an end of a half: a table whose entries in the half's own axes are the
/// bending moment (2, 2) and the torque (2, 3).
struct Printed {
    std::array<double, 6> xxToYz{};
    [[nodiscard]] double entry(Vec3 a, Vec3 b) const
    {
        const auto& s = xxToYz;
        return s[0] * a.x * b.x + s[1] * a.y * b.y + s[2] * a.z * b.z +
               s[3] * (a.x * b.y + a.y * b.x) + s[4] * (a.x * b.z + a.z * b.x) +
               s[5] * (a.y * b.z + a.z * b.y);
    }
};

std::vector<std::array<Printed, 2>> readPrinted(const std::filesystem::path& file,
                                                std::size_t halves)
{
    std::ifstream in(file);
    std::vector<std::array<Printed, 2>> ends(halves);
    std::size_t read = 0;
    for (std::string line; std::getline(in, line);) {
        std::istringstream row(line);
        std::size_t half = 0;
        std::size_t end = 0;
        Printed printed;
        if (!(row >> half >> end) || half < 1 || half > halves || end < 1 || end > 2)
            continue;
        for (auto& value : printed.xxToYz)
            row >> value;
        if (!row)
            continue;
        ends[half - 1][end - 1] = printed;
        ++read;
    }
    if (read != 2 * halves)
        throw std::runtime_error("solveFrame: can't read what ccx wrote to " + file.string());
    return ends;
}

BarEnd together(const Axes& axes, const Printed& first, const Printed& second)
{
    const auto& [one, two] = axes.second;
    const double torque =
        first.entry(one, cross(axes.along, one)) + second.entry(two, cross(axes.along, two));
    return {std::hypot(first.entry(one, one), second.entry(two, two)), std::abs(torque)};
}

} // namespace

std::vector<BarEnds> solveFrame(const Frame& frame, const std::string& name)
{
    namespace fs = std::filesystem;
    const fs::path folder = fs::path(testing::TempDir()) / ("underbough-frame-" + name);
    fs::remove_all(folder);
    fs::create_directories(folder);
    std::ofstream(folder / "frame.inp") << inputDeck(frame);
    const std::string command = "cd '" + folder.string() + "' && ccx frame > ccx.log 2>&1";
    if (std::system(command.c_str()) != 0)
        throw std::runtime_error("solveFrame: ccx (Debian package calculix-ccx) is missing or "
                                 "failed; see " +
                                 (folder / "ccx.log").string());
    const auto printed = readPrinted(folder / "frame.dat", 2 * frame.bars.size());
    std::vector<BarEnds> ends;
    for (std::size_t i = 0; i < frame.bars.size(); ++i) {
        const auto own = axes(frame, frame.bars[i]);
        ends.push_back({together(own, printed[2 * i][0], printed[2 * i + 1][0]),
                        together(own, printed[2 * i][1], printed[2 * i + 1][1])});
    }
    fs::remove_all(folder);
    return ends;
}

} // namespace model::load
