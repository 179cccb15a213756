# What a desktop and a package manager want of the program: installed by cmake --install, packed by
# cpack. The manual and the completion are written from the program's own --help.
find_package(Python3 3.11 REQUIRED COMPONENTS Interpreter)

set(package ${PROJECT_SOURCE_DIR}/app/package)
set(made ${PROJECT_BINARY_DIR}/package)
file(MAKE_DIRECTORY ${made})
file(STRINGS ${PROJECT_SOURCE_DIR}/app/store/schema.hpp line REGEX "kApplicationId = ")
string(REGEX MATCH "0x[0-9a-f]+" APPLICATION_ID "${line}")
foreach(file metainfo.xml mime.xml)
  configure_file(${package}/org.underbough.Underbough.${file} ${made}/ @ONLY)
endforeach()

add_custom_command(
  OUTPUT ${made}/underbough.1 ${made}/underbough.bash
  COMMAND Python3::Interpreter ${package}/write_manual.py $<TARGET_FILE:underbough>
    ${PROJECT_VERSION} ${made}
  DEPENDS underbough ${package}/write_manual.py
  VERBATIM)
add_custom_target(manual ALL DEPENDS ${made}/underbough.1 ${made}/underbough.bash)

set(docs ${CMAKE_INSTALL_DATADIR}/doc/underbough) # as Debian has it: the name of the package
set(icons ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable)
install(FILES ${package}/org.underbough.Underbough.desktop
  DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES ${made}/org.underbough.Underbough.metainfo.xml
  DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
install(FILES ${made}/org.underbough.Underbough.mime.xml
  DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages)
install(FILES ${package}/org.underbough.Underbough.svg DESTINATION ${icons}/apps)
install(FILES ${package}/org.underbough.Underbough.garden.svg DESTINATION ${icons}/mimetypes)
install(FILES ${made}/underbough.1 DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)
install(FILES ${made}/underbough.bash
  DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions RENAME underbough)
install(FILES ${PROJECT_SOURCE_DIR}/docs/licence.md ${PROJECT_SOURCE_DIR}/docs/changelog.md
  DESTINATION ${docs})
install(FILES ${package}/copyright DESTINATION ${docs})

# The pages' modules are loaded while the program runs, so that no linker can tell of them.
file(STRINGS ${PROJECT_SOURCE_DIR}/.ci/packages.txt runs REGEX "^run ")
list(TRANSFORM runs REPLACE "^run ([^ ]+) .*$" "\\1")
list(JOIN runs ", " CPACK_DEBIAN_PACKAGE_DEPENDS)
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_CONTACT "The founders of Underbough <founders@underbough.example>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "decide what to cut from your trees, and whether to")
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION "Underbough reckons from a sketch what a tree's limbs carry in a
gust, the headroom beneath them and the sun they take, finds the fewest
cuts that help, keeps the diary, and says when to hire an arborist. Its
answers are estimates: they never say that a tree is safe.")
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_STRIP_FILES ON)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
include(CPack)
