/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The faces in which pictures leave the program: four of DejaVu Sans, which the build takes out of a published archive
 * and puts, with their licence, into this module beside the classes.
 */
package org.ferrule.io.fonts;
