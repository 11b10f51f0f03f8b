# What is installed where, and what the package holds.
if(NOT TARGET hammerline)
  return()
endif()
install(TARGETS hammerline RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
install(FILES packaging/linux/hammerline.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES packaging/linux/hammerline.metainfo.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
install(FILES resources/icons/hammerline.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
install(DIRECTORY resources/schemas DESTINATION ${CMAKE_INSTALL_DATADIR}/hammerline)
install(FILES packaging/copyright DESTINATION ${CMAKE_INSTALL_DOCDIR})

# Debian wants both pressed as small as gzip can and without a time stamp.
function(hammerline_install_gzipped source name destination)
  add_custom_command(OUTPUT ${CMAKE_BINARY_DIR}/${name}.gz
    COMMAND gzip -9nc ${CMAKE_SOURCE_DIR}/${source} > ${CMAKE_BINARY_DIR}/${name}.gz
    DEPENDS ${CMAKE_SOURCE_DIR}/${source} VERBATIM)
  add_custom_target(gzip_${name} ALL DEPENDS ${CMAKE_BINARY_DIR}/${name}.gz)
  install(FILES ${CMAKE_BINARY_DIR}/${name}.gz DESTINATION ${destination})
endfunction()
hammerline_install_gzipped(packaging/changelog changelog ${CMAKE_INSTALL_DOCDIR})
hammerline_install_gzipped(packaging/man/hammerline.1 hammerline.1 ${CMAKE_INSTALL_MANDIR}/man1)

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_PACKAGE_CONTACT "Hammerline developers <developers@hammerline.invalid>")
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION misc)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PACKAGE_DEPENDS "fonts-dejavu-core")
# A voice, where readings are to be spoken; the program is whole without.
set(CPACK_DEBIAN_PACKAGE_SUGGESTS "qt6-speech-speechd-plugin | qt6-speech-flite-plugin")
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION
"Takes the readings of a piano's action key by key, judges them by a tolerance
set, compares before and after, keeps all of it in one file and issues the
regulation record as a PDF with its data inside.")
include(CPack)
