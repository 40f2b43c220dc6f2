/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** A program as a stranger would write it: plain Java, a class path, the jars of the kernel. */
package org.ferrule.consumer;
