# cmake -D ... -P: install the engine, then configure, build and run the consumer against it. Any step that
# fails fails the test.

# step(COMMAND...): runs it; its output in `output`.
function(step)
  execute_process(COMMAND ${ARGV} RESULT_VARIABLE result OUTPUT_VARIABLE text ERROR_VARIABLE text)
  if(NOT result EQUAL 0)
    list(JOIN ARGV " " command)
    message(NOTICE "${text}")   # as it is; a FATAL_ERROR would reflow it
    message(FATAL_ERROR "this ended with ${result}: ${command}")
  endif()
  set(output "${text}" PARENT_SCOPE)
endfunction()

# What an earlier run installed must not hide what is missing today.
file(REMOVE_RECURSE ${scratch})
step(${CMAKE_COMMAND} --install ${engine_build} --prefix ${scratch}/installed --component engine)
step(${CMAKE_COMMAND} -S ${consumer_source} -B ${scratch}/build -G ${generator}
  -D CMAKE_BUILD_TYPE=Release -D CMAKE_CXX_COMPILER=${compiler} -D CMAKE_CXX_COMPILER_LAUNCHER=${launcher}
  -D CMAKE_PREFIX_PATH=${scratch}/installed -D wanted_version=${version})
step(${CMAKE_COMMAND} --build ${scratch}/build)
step(${scratch}/build/consumer)
if(NOT output MATCHES "0\\.5 mm = 0\\.0005 m")
  message(FATAL_ERROR "the consumer printed:\n${output}")
endif()
message(STATUS "the consumer printed: ${output}")
