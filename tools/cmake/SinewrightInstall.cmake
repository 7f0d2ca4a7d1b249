# Installs the engine so that another CMake project can say find_package(sinewright) and link sinewright::engine,
# and the command-line tool with the models and scenarios beside it. The floors install themselves
# (SinewrightFloor.cmake). `cmake --install FOLDER --component engine` leaves the command-line tool out.

include(CMakePackageConfigHelpers)

set(package_folder ${CMAKE_INSTALL_LIBDIR}/cmake/sinewright)
install(TARGETS sinewright_engine EXPORT sinewrightTargets COMPONENT engine)
install(EXPORT sinewrightTargets NAMESPACE sinewright:: DESTINATION ${package_folder} COMPONENT engine)
configure_package_config_file(${CMAKE_CURRENT_LIST_DIR}/sinewrightConfig.cmake.in
  ${PROJECT_BINARY_DIR}/sinewrightConfig.cmake INSTALL_DESTINATION ${package_folder})
# Before 1.0 every minor version may change the interface.
write_basic_package_version_file(${PROJECT_BINARY_DIR}/sinewrightConfigVersion.cmake
  COMPATIBILITY SameMinorVersion)
install(FILES ${PROJECT_BINARY_DIR}/sinewrightConfig.cmake ${PROJECT_BINARY_DIR}/sinewrightConfigVersion.cmake
  DESTINATION ${package_folder} COMPONENT engine)

if(TARGET sinewright)
  install(TARGETS sinewright RUNTIME COMPONENT tools)
endif()
install(DIRECTORY ${PROJECT_SOURCE_DIR}/models ${PROJECT_SOURCE_DIR}/scenarios
  DESTINATION ${CMAKE_INSTALL_DATADIR}/sinewright COMPONENT tools)
