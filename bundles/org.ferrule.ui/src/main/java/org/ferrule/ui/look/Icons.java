/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.look;

import java.net.URL;

import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.IPath;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.graphics.Image;
import org.ferrule.model.DeviceKind;
import org.ferrule.model.DocumentKind;
import org.osgi.framework.FrameworkUtil;

/**
 * The icons of the workbench, drawn as SVG and so sharp at every scale. They are made for 16 pixels and told apart by
 * shape, not by colour alone; they stand on light and on dark.
 */
public enum Icons {

    /** A library of devices. */
    DEVICES("devices"),
    /** A set of rules. */
    RULES("rules"),
    /** A fit chart. */
    CHART("chart"),
    /** Techniques. */
    TECHNIQUES("techniques"),
    /** A case. */
    CASE("case"),
    /** A shelf. */
    SHELF("shelf"),
    /** A line of devices. */
    LINE("line"),
    /** Something with a lumen for others: sheaths, guides, extensions. */
    TUBE("tube"),
    /** A microcatheter or another inner catheter. */
    CATHETER("catheter"),
    /** A guidewire. */
    WIRE("wire"),
    /** A balloon of any kind. */
    BALLOON("balloon"),
    /** A stent. */
    STENT("stent"),
    /** A burr, a crown or a laser. */
    CUTTER("cutter"),
    /** An imaging catheter. */
    IMAGING("imaging"),
    /** Any other device. */
    DEVICE("device"),
    /** The project. */
    PROJECT("project"),
    /** The demo. */
    DEMO("demo"),
    /** Help. */
    HELP("help"),
    /** The welcome page. */
    WELCOME("welcome");

    private final String file;

    Icons(String file) {
        this.file = file;
    }

    /** Returns the path of the icon in the bundle. */
    public String path() {
        return "icons/" + file + ".svg";
    }

    /** Returns the descriptor of the icon. */
    public ImageDescriptor descriptor() {
        URL url = FileLocator.find(FrameworkUtil.getBundle(Icons.class), IPath.fromPortableString(path()), null);
        return ImageDescriptor.createFromURL(url);
    }

    /** Returns the image, which nobody needs to dispose of; on the display's thread only. */
    public Image image() {
        String key = "org.ferrule.ui/" + path();
        if (JFaceResources.getImageRegistry().getDescriptor(key) == null) {
            JFaceResources.getImageRegistry().put(key, descriptor());
        }
        return JFaceResources.getImageRegistry().get(key);
    }

    /** Returns the icon of a kind of document. */
    public static Icons of(DocumentKind kind) {
        return switch (kind) {
            case DEVICES -> DEVICES;
            case RULES -> RULES;
            case CHART -> CHART;
            case TECHNIQUES -> TECHNIQUES;
            case CASE -> CASE;
            case SHELF -> SHELF;
        };
    }

    /** Returns the icon of a kind of device; null is a device of unknown kind. */
    public static Icons of(DeviceKind kind) {
        if (kind == null) {
            return DEVICE;
        }
        return switch (kind) {
            case INTRODUCER_SHEATH, GUIDE_CATHETER, GUIDE_EXTENSION, HAEMOSTASIS_VALVE, DILATOR -> TUBE;
            case INNER_CATHETER, MICROCATHETER, DUAL_LUMEN_MICROCATHETER, ASPIRATION_CATHETER, DRAIN_CATHETER ->
                CATHETER;
            case GUIDEWIRE, COIL, SNARE -> WIRE;
            case BALLOON_CATHETER, SCORING_BALLOON, CUTTING_BALLOON, LITHOTRIPSY_BALLOON -> BALLOON;
            case STENT_SYSTEM, COVERED_STENT_SYSTEM -> STENT;
            case ROTATIONAL_BURR, ORBITAL_CROWN, LASER_CATHETER -> CUTTER;
            case IMAGING_CATHETER -> IMAGING;
            case OTHER -> DEVICE;
        };
    }
}
