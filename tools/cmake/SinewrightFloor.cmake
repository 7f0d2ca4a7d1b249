# Compiler settings that every target of the project shares, and one function that declares a floor of the engine.

add_library(sinewright_build_settings INTERFACE)
target_compile_options(sinewright_build_settings INTERFACE
  -Wall -Wextra -Wpedantic -Wshadow -Wnon-virtual-dtor
  # g++ 12 takes the other alternatives of a copied std::variant for uninitialised reads.
  # and warns of overlapping copies inside std::string (GCC bug 105329).
  $<$<CXX_COMPILER_ID:GNU>:-Wno-maybe-uninitialized;-Wno-restrict>
  # Fused multiply-add is the one value-changing contraction that is on by default; off, so that bits repeat.
  -ffp-contract=off
  $<$<BOOL:${SINEWRIGHT_WARNINGS_AS_ERRORS}>:-Werror>
  # Two checks at every access through a pointer take a third of the compiler's time: null is stopped by the address sanitizer as
  # well, and the engine casts no pointers, so that none is misaligned.
  $<$<BOOL:${SINEWRIGHT_SANITIZE}>:-fsanitize=address,undefined;-fno-sanitize=null,alignment;-fno-sanitize-recover=all;-fno-omit-frame-pointer>)
target_link_options(sinewright_build_settings INTERFACE
  $<$<BOOL:${SINEWRIGHT_SANITIZE}>:-fsanitize=address,undefined>)

# sinewright_precompiled(NAME LINK target ... HEADERS header ...): outside headers for targets to read once instead of in every file, by
# target_precompile_headers(... REUSE_FROM NAME). They hide a forgotten include, so the engine that is shipped is built without.
function(sinewright_precompiled name)
  cmake_parse_arguments(PRECOMPILED "" "" "LINK;HEADERS" ${ARGN})
  file(CONFIGURE OUTPUT ${CMAKE_CURRENT_BINARY_DIR}/${name}.cpp CONTENT "")
  add_library(${name} OBJECT ${CMAKE_CURRENT_BINARY_DIR}/${name}.cpp)
  target_link_libraries(${name} PRIVATE sinewright_build_settings ${PRECOMPILED_LINK})
  target_precompile_headers(${name} PRIVATE ${PRECOMPILED_HEADERS})
endfunction()

# sinewright_floor(NAME SOURCES a.cpp ... HEADERS a.h ... [BELOW floor ...] [PUBLIC target ...] [PRIVATE target ...])
# BELOW names the floors that this one stands on; only those may be included.
function(sinewright_floor name)
  cmake_parse_arguments(FLOOR "" "" "SOURCES;HEADERS;BELOW;PUBLIC;PRIVATE" ${ARGN})
  if(FLOOR_SOURCES)
    add_library(sinewright_${name} STATIC ${FLOOR_SOURCES})
    set(scope PUBLIC)
    target_link_libraries(sinewright_${name} PRIVATE $<BUILD_INTERFACE:sinewright_build_settings> ${FLOOR_PRIVATE})
    set_target_properties(sinewright_${name} PROPERTIES POSITION_INDEPENDENT_CODE ON)
    if(SINEWRIGHT_SANITIZE)
      target_precompile_headers(sinewright_${name} REUSE_FROM sinewright_engine_precompiled)
    endif()
  else()
    add_library(sinewright_${name} INTERFACE)
    set(scope INTERFACE)
  endif()
  add_library(sinewright::${name} ALIAS sinewright_${name})
  set_target_properties(sinewright_${name} PROPERTIES EXPORT_NAME ${name})
  target_compile_features(sinewright_${name} ${scope} cxx_std_20)
  target_include_directories(sinewright_${name} ${scope} $<BUILD_INTERFACE:${PROJECT_SOURCE_DIR}/engine>)
  target_sources(sinewright_${name} ${scope} FILE_SET HEADERS
    BASE_DIRS ${PROJECT_SOURCE_DIR}/engine FILES ${FLOOR_HEADERS})
  foreach(below ${FLOOR_BELOW})
    target_link_libraries(sinewright_${name} ${scope} sinewright::${below})
  endforeach()
  target_link_libraries(sinewright_${name} ${scope} ${FLOOR_PUBLIC})
  set_property(GLOBAL APPEND PROPERTY SINEWRIGHT_FLOORS sinewright_${name})
  # Installed headers keep their floor as folder: #include <model/model.h> with include/sinewright on the path.
  install(TARGETS sinewright_${name} EXPORT sinewrightTargets COMPONENT engine
    ARCHIVE DESTINATION ${CMAKE_INSTALL_LIBDIR} COMPONENT engine
    FILE_SET HEADERS DESTINATION ${CMAKE_INSTALL_INCLUDEDIR}/sinewright COMPONENT engine)
endfunction()
