//! Copying and filling memory, byte by byte: a hundred bytes of flash. What the compiler brings is
//! unrolled for speed that a gauge does not want, and takes three thousand.
//!
//! Names and registers: C library and Run-time ABI for the Arm Architecture (IHI 0043), 4.3.4.

core::arch::global_asm!(
    ".macro named names:vararg",
    ".irp name, \\names",
    ".global \\name",
    ".thumb_func",
    "\\name:",
    ".endr",
    ".endm",
    // To r0 from r1, r2 bytes, from whichever end keeps what is still to be read; r0 stays.
    ".section .text.memory_copy, \"ax\", %progbits",
    "named memcpy, __aeabi_memcpy, __aeabi_memcpy4, __aeabi_memcpy8",
    "named memmove, __aeabi_memmove, __aeabi_memmove4, __aeabi_memmove8",
    "cmp r1, r0",
    "mov r12, r0",
    "bhs 2f",
    "1: subs r2, r2, #1",
    "bmi 3f",
    "ldrb r3, [r1, r2]",
    "strb r3, [r0, r2]",
    "b 1b",
    "2: subs r2, r2, #1",
    "bmi 3f",
    "ldrb r3, [r1], #1",
    "strb r3, [r12], #1",
    "b 2b",
    "3: bx lr",
    // At r0, r1 bytes of r2 or of 0; `memset` has its last two the other way round.
    ".section .text.memory_fill, \"ax\", %progbits",
    "named memset",
    "mov r3, r1",
    "mov r1, r2",
    "mov r2, r3",
    "b 1f",
    "named __aeabi_memclr, __aeabi_memclr4, __aeabi_memclr8",
    "movs r2, #0",
    "named __aeabi_memset, __aeabi_memset4, __aeabi_memset8",
    "1: mov r12, r0",
    "2: subs r1, r1, #1",
    "bmi 3f",
    "strb r2, [r12], #1",
    "b 2b",
    "3: bx lr",
);
