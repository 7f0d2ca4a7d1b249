#pragma once

/// Allocations of this program so far.
long heap_count();
