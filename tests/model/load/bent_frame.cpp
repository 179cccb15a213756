#include "tests/model/load/bent_frame.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iomanip>
#include <sstream>
#include <stdexcept>

namespace model::load {
namespace {

/// Nodes are numbered from 1; the middles of the bars follow those of the frame.
std::string inputDeck(const BentFrame& frame)
{
    std::ostringstream deck;
    deck << std::scientific << std::setprecision(12) << "*NODE,NSET=NALL\n";
    const auto node = [&](std::size_t number, Vec3 at) {
        deck << number << "," << at.x << "," << at.y << "," << at.z << "\n";
    };
    const std::size_t count = frame.nodes_m.size();
    for (std::size_t i = 0; i < count; ++i)
        node(i + 1, frame.nodes_m[i]);
    for (std::size_t i = 0; i < frame.bars.size(); ++i)
        node(count + i + 1,
             between(frame.nodes_m[frame.bars[i].from], frame.nodes_m[frame.bars[i].to], 0.5));
    for (std::size_t i = 0; i < frame.bars.size(); ++i)
        deck << "*ELEMENT,TYPE=B32R,ELSET=E" << i + 1 << "\n"
             << i + 1 << "," << frame.bars[i].from + 1 << "," << count + i + 1 << ","
             << frame.bars[i].to + 1 << "\n";
    deck << "*BOUNDARY\n1,1,6\n";
    for (const auto prop : frame.props)
        deck << prop + 1 << ",3,3\n";
    deck << "*MATERIAL,NAME=WOOD\n*ELASTIC\n" << frame.stiffness_Pa << ",0.3\n";
    for (std::size_t i = 0; i < frame.bars.size(); ++i) {
        const auto& bar = frame.bars[i];
        const Vec3 run = frame.nodes_m[bar.to] - frame.nodes_m[bar.from];
        const Vec3 along = (1.0 / norm(run)) * run;
        const Vec3 aside = std::abs(along.z) < 0.9 ? Vec3{0, 0, 1} : Vec3{1, 0, 0};
        const Vec3 first = cross(along, aside);
        deck << "*BEAM SECTION,ELSET=E" << i + 1 << ",MATERIAL=WOOD,SECTION=RECT\n"
             << bar.side_m << "," << bar.side_m << "\n"
             << first.x << "," << first.y << "," << first.z << "\n";
    }
    deck << "*STEP" << (frame.bendsFar ? ",NLGEOM,INC=1000" : "") << "\n*STATIC\n"
         << (frame.bendsFar ? "0.05,1.0\n" : "") << "*CLOAD\n";
    for (std::size_t i = 0; i < count; ++i)
        if (frame.down_N[i] != 0.0)
            deck << i + 1 << ",3," << -frame.down_N[i] << "\n";
    deck << "*NODE PRINT,NSET=NALL,FREQUENCY=10000\nU,RF\n*END STEP\n";
    return deck.str();
}

/// Two tables: displacements, then forces.
std::vector<Vec3> readTable(std::istream& in, std::size_t rows)
{
    std::vector<Vec3> table(rows);
    std::size_t read = 0;
    for (std::string line; read < rows && std::getline(in, line);) {
        std::istringstream row(line);
        std::size_t node = 0;
        Vec3 v;
        if (!(row >> node >> v.x >> v.y >> v.z) || node < 1 || node > rows)
            continue;
        table[node - 1] = v;
        ++read;
    }
    if (read != rows)
        throw std::runtime_error("solveBentFrame: can't read what ccx wrote");
    return table;
}

} // namespace

BentNodes solveBentFrame(const BentFrame& frame, const std::string& name)
{
    namespace fs = std::filesystem;
    const fs::path folder = fs::path(testing::TempDir()) / ("underbough-bent-" + name);
    fs::remove_all(folder);
    fs::create_directories(folder);
    std::ofstream(folder / "frame.inp") << inputDeck(frame);
    const std::string command = "cd '" + folder.string() + "' && ccx frame > ccx.log 2>&1";
    if (std::system(command.c_str()) != 0)
        throw std::runtime_error("solveBentFrame: ccx (Debian package calculix-ccx) is missing or "
                                 "failed; see " +
                                 (folder / "ccx.log").string());
    std::ifstream in(folder / "frame.dat");
    const std::size_t rows = frame.nodes_m.size() + frame.bars.size();
    BentNodes result;
    const auto moved = readTable(in, rows);
    const auto forces = readTable(in, rows);
    result.moved_m.assign(moved.begin(),
                          moved.begin() + static_cast<std::ptrdiff_t>(frame.nodes_m.size()));
    for (const auto prop : frame.props)
        result.push_N.push_back(forces[prop].z + frame.down_N[prop]);
    fs::remove_all(folder);
    return result;
}

} // namespace model::load
