/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Device Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * The kinds of device, for grouping and naming.
 * <!-- end-model-doc -->
 * @see org.ferrule.model.ModelPackage#getDeviceKind()
 * @model
 * @generated
 */
public enum DeviceKind implements Enumerator
{
	/**
	 * The '<em><b>Introducer Sheath</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INTRODUCER_SHEATH_VALUE
	 * @generated
	 * @ordered
	 */
	INTRODUCER_SHEATH(0, "introducerSheath", "introducer sheath"),

	/**
	 * The '<em><b>Guide Catheter</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GUIDE_CATHETER_VALUE
	 * @generated
	 * @ordered
	 */
	GUIDE_CATHETER(1, "guideCatheter", "guide catheter"),

	/**
	 * The '<em><b>Guide Extension</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GUIDE_EXTENSION_VALUE
	 * @generated
	 * @ordered
	 */
	GUIDE_EXTENSION(2, "guideExtension", "guide extension"),

	/**
	 * The '<em><b>Inner Catheter</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INNER_CATHETER_VALUE
	 * @generated
	 * @ordered
	 */
	INNER_CATHETER(3, "innerCatheter", "inner catheter"),

	/**
	 * The '<em><b>Microcatheter</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MICROCATHETER_VALUE
	 * @generated
	 * @ordered
	 */
	MICROCATHETER(4, "microcatheter", "microcatheter"),

	/**
	 * The '<em><b>Dual Lumen Microcatheter</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DUAL_LUMEN_MICROCATHETER_VALUE
	 * @generated
	 * @ordered
	 */
	DUAL_LUMEN_MICROCATHETER(5, "dualLumenMicrocatheter", "dual-lumen microcatheter"),

	/**
	 * The '<em><b>Guidewire</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GUIDEWIRE_VALUE
	 * @generated
	 * @ordered
	 */
	GUIDEWIRE(6, "guidewire", "guidewire"),

	/**
	 * The '<em><b>Balloon Catheter</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BALLOON_CATHETER_VALUE
	 * @generated
	 * @ordered
	 */
	BALLOON_CATHETER(7, "balloonCatheter", "balloon catheter"),

	/**
	 * The '<em><b>Scoring Balloon</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SCORING_BALLOON_VALUE
	 * @generated
	 * @ordered
	 */
	SCORING_BALLOON(8, "scoringBalloon", "scoring balloon"),

	/**
	 * The '<em><b>Cutting Balloon</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CUTTING_BALLOON_VALUE
	 * @generated
	 * @ordered
	 */
	CUTTING_BALLOON(9, "cuttingBalloon", "cutting balloon"),

	/**
	 * The '<em><b>Lithotripsy Balloon</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LITHOTRIPSY_BALLOON_VALUE
	 * @generated
	 * @ordered
	 */
	LITHOTRIPSY_BALLOON(10, "lithotripsyBalloon", "lithotripsy balloon"),

	/**
	 * The '<em><b>Stent System</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STENT_SYSTEM_VALUE
	 * @generated
	 * @ordered
	 */
	STENT_SYSTEM(11, "stentSystem", "stent system"),

	/**
	 * The '<em><b>Covered Stent System</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COVERED_STENT_SYSTEM_VALUE
	 * @generated
	 * @ordered
	 */
	COVERED_STENT_SYSTEM(12, "coveredStentSystem", "covered stent system"),

	/**
	 * The '<em><b>Rotational Burr</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ROTATIONAL_BURR_VALUE
	 * @generated
	 * @ordered
	 */
	ROTATIONAL_BURR(13, "rotationalBurr", "rotational burr"),

	/**
	 * The '<em><b>Orbital Crown</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ORBITAL_CROWN_VALUE
	 * @generated
	 * @ordered
	 */
	ORBITAL_CROWN(14, "orbitalCrown", "orbital crown"),

	/**
	 * The '<em><b>Laser Catheter</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LASER_CATHETER_VALUE
	 * @generated
	 * @ordered
	 */
	LASER_CATHETER(15, "laserCatheter", "laser catheter"),

	/**
	 * The '<em><b>Imaging Catheter</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #IMAGING_CATHETER_VALUE
	 * @generated
	 * @ordered
	 */
	IMAGING_CATHETER(16, "imagingCatheter", "imaging catheter"),

	/**
	 * The '<em><b>Aspiration Catheter</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ASPIRATION_CATHETER_VALUE
	 * @generated
	 * @ordered
	 */
	ASPIRATION_CATHETER(17, "aspirationCatheter", "aspiration catheter"),

	/**
	 * The '<em><b>Snare</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SNARE_VALUE
	 * @generated
	 * @ordered
	 */
	SNARE(18, "snare", "snare"),

	/**
	 * The '<em><b>Coil</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COIL_VALUE
	 * @generated
	 * @ordered
	 */
	COIL(19, "coil", "coil"),

	/**
	 * The '<em><b>Drain Catheter</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DRAIN_CATHETER_VALUE
	 * @generated
	 * @ordered
	 */
	DRAIN_CATHETER(20, "drainCatheter", "drain catheter"),

	/**
	 * The '<em><b>Haemostasis Valve</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HAEMOSTASIS_VALVE_VALUE
	 * @generated
	 * @ordered
	 */
	HAEMOSTASIS_VALVE(21, "haemostasisValve", "haemostasis valve"),

	/**
	 * The '<em><b>Dilator</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DILATOR_VALUE
	 * @generated
	 * @ordered
	 */
	DILATOR(22, "dilator", "dilator"),

	/**
	 * The '<em><b>Other</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OTHER_VALUE
	 * @generated
	 * @ordered
	 */
	OTHER(23, "other", "other");

	/**
	 * The '<em><b>Introducer Sheath</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INTRODUCER_SHEATH
	 * @model name="introducerSheath" literal="introducer sheath"
	 * @generated
	 * @ordered
	 */
	public static final int INTRODUCER_SHEATH_VALUE = 0;

	/**
	 * The '<em><b>Guide Catheter</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GUIDE_CATHETER
	 * @model name="guideCatheter" literal="guide catheter"
	 * @generated
	 * @ordered
	 */
	public static final int GUIDE_CATHETER_VALUE = 1;

	/**
	 * The '<em><b>Guide Extension</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GUIDE_EXTENSION
	 * @model name="guideExtension" literal="guide extension"
	 * @generated
	 * @ordered
	 */
	public static final int GUIDE_EXTENSION_VALUE = 2;

	/**
	 * The '<em><b>Inner Catheter</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #INNER_CATHETER
	 * @model name="innerCatheter" literal="inner catheter"
	 * @generated
	 * @ordered
	 */
	public static final int INNER_CATHETER_VALUE = 3;

	/**
	 * The '<em><b>Microcatheter</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MICROCATHETER
	 * @model name="microcatheter"
	 * @generated
	 * @ordered
	 */
	public static final int MICROCATHETER_VALUE = 4;

	/**
	 * The '<em><b>Dual Lumen Microcatheter</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DUAL_LUMEN_MICROCATHETER
	 * @model name="dualLumenMicrocatheter" literal="dual-lumen microcatheter"
	 * @generated
	 * @ordered
	 */
	public static final int DUAL_LUMEN_MICROCATHETER_VALUE = 5;

	/**
	 * The '<em><b>Guidewire</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #GUIDEWIRE
	 * @model name="guidewire"
	 * @generated
	 * @ordered
	 */
	public static final int GUIDEWIRE_VALUE = 6;

	/**
	 * The '<em><b>Balloon Catheter</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BALLOON_CATHETER
	 * @model name="balloonCatheter" literal="balloon catheter"
	 * @generated
	 * @ordered
	 */
	public static final int BALLOON_CATHETER_VALUE = 7;

	/**
	 * The '<em><b>Scoring Balloon</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SCORING_BALLOON
	 * @model name="scoringBalloon" literal="scoring balloon"
	 * @generated
	 * @ordered
	 */
	public static final int SCORING_BALLOON_VALUE = 8;

	/**
	 * The '<em><b>Cutting Balloon</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CUTTING_BALLOON
	 * @model name="cuttingBalloon" literal="cutting balloon"
	 * @generated
	 * @ordered
	 */
	public static final int CUTTING_BALLOON_VALUE = 9;

	/**
	 * The '<em><b>Lithotripsy Balloon</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LITHOTRIPSY_BALLOON
	 * @model name="lithotripsyBalloon" literal="lithotripsy balloon"
	 * @generated
	 * @ordered
	 */
	public static final int LITHOTRIPSY_BALLOON_VALUE = 10;

	/**
	 * The '<em><b>Stent System</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #STENT_SYSTEM
	 * @model name="stentSystem" literal="stent system"
	 * @generated
	 * @ordered
	 */
	public static final int STENT_SYSTEM_VALUE = 11;

	/**
	 * The '<em><b>Covered Stent System</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COVERED_STENT_SYSTEM
	 * @model name="coveredStentSystem" literal="covered stent system"
	 * @generated
	 * @ordered
	 */
	public static final int COVERED_STENT_SYSTEM_VALUE = 12;

	/**
	 * The '<em><b>Rotational Burr</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ROTATIONAL_BURR
	 * @model name="rotationalBurr" literal="rotational burr"
	 * @generated
	 * @ordered
	 */
	public static final int ROTATIONAL_BURR_VALUE = 13;

	/**
	 * The '<em><b>Orbital Crown</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ORBITAL_CROWN
	 * @model name="orbitalCrown" literal="orbital crown"
	 * @generated
	 * @ordered
	 */
	public static final int ORBITAL_CROWN_VALUE = 14;

	/**
	 * The '<em><b>Laser Catheter</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LASER_CATHETER
	 * @model name="laserCatheter" literal="laser catheter"
	 * @generated
	 * @ordered
	 */
	public static final int LASER_CATHETER_VALUE = 15;

	/**
	 * The '<em><b>Imaging Catheter</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #IMAGING_CATHETER
	 * @model name="imagingCatheter" literal="imaging catheter"
	 * @generated
	 * @ordered
	 */
	public static final int IMAGING_CATHETER_VALUE = 16;

	/**
	 * The '<em><b>Aspiration Catheter</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ASPIRATION_CATHETER
	 * @model name="aspirationCatheter" literal="aspiration catheter"
	 * @generated
	 * @ordered
	 */
	public static final int ASPIRATION_CATHETER_VALUE = 17;

	/**
	 * The '<em><b>Snare</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SNARE
	 * @model name="snare"
	 * @generated
	 * @ordered
	 */
	public static final int SNARE_VALUE = 18;

	/**
	 * The '<em><b>Coil</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #COIL
	 * @model name="coil"
	 * @generated
	 * @ordered
	 */
	public static final int COIL_VALUE = 19;

	/**
	 * The '<em><b>Drain Catheter</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DRAIN_CATHETER
	 * @model name="drainCatheter" literal="drain catheter"
	 * @generated
	 * @ordered
	 */
	public static final int DRAIN_CATHETER_VALUE = 20;

	/**
	 * The '<em><b>Haemostasis Valve</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #HAEMOSTASIS_VALVE
	 * @model name="haemostasisValve" literal="haemostasis valve"
	 * @generated
	 * @ordered
	 */
	public static final int HAEMOSTASIS_VALVE_VALUE = 21;

	/**
	 * The '<em><b>Dilator</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DILATOR
	 * @model name="dilator"
	 * @generated
	 * @ordered
	 */
	public static final int DILATOR_VALUE = 22;

	/**
	 * The '<em><b>Other</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OTHER
	 * @model name="other"
	 * @generated
	 * @ordered
	 */
	public static final int OTHER_VALUE = 23;

	/**
	 * An array of all the '<em><b>Device Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final DeviceKind[] VALUES_ARRAY =
		new DeviceKind[]
		{
			INTRODUCER_SHEATH,
			GUIDE_CATHETER,
			GUIDE_EXTENSION,
			INNER_CATHETER,
			MICROCATHETER,
			DUAL_LUMEN_MICROCATHETER,
			GUIDEWIRE,
			BALLOON_CATHETER,
			SCORING_BALLOON,
			CUTTING_BALLOON,
			LITHOTRIPSY_BALLOON,
			STENT_SYSTEM,
			COVERED_STENT_SYSTEM,
			ROTATIONAL_BURR,
			ORBITAL_CROWN,
			LASER_CATHETER,
			IMAGING_CATHETER,
			ASPIRATION_CATHETER,
			SNARE,
			COIL,
			DRAIN_CATHETER,
			HAEMOSTASIS_VALVE,
			DILATOR,
			OTHER,
		};

	/**
	 * A public read-only list of all the '<em><b>Device Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<DeviceKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Device Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static DeviceKind get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			DeviceKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Device Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static DeviceKind getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			DeviceKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Device Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static DeviceKind get(int value)
	{
		switch (value)
		{
			case INTRODUCER_SHEATH_VALUE: return INTRODUCER_SHEATH;
			case GUIDE_CATHETER_VALUE: return GUIDE_CATHETER;
			case GUIDE_EXTENSION_VALUE: return GUIDE_EXTENSION;
			case INNER_CATHETER_VALUE: return INNER_CATHETER;
			case MICROCATHETER_VALUE: return MICROCATHETER;
			case DUAL_LUMEN_MICROCATHETER_VALUE: return DUAL_LUMEN_MICROCATHETER;
			case GUIDEWIRE_VALUE: return GUIDEWIRE;
			case BALLOON_CATHETER_VALUE: return BALLOON_CATHETER;
			case SCORING_BALLOON_VALUE: return SCORING_BALLOON;
			case CUTTING_BALLOON_VALUE: return CUTTING_BALLOON;
			case LITHOTRIPSY_BALLOON_VALUE: return LITHOTRIPSY_BALLOON;
			case STENT_SYSTEM_VALUE: return STENT_SYSTEM;
			case COVERED_STENT_SYSTEM_VALUE: return COVERED_STENT_SYSTEM;
			case ROTATIONAL_BURR_VALUE: return ROTATIONAL_BURR;
			case ORBITAL_CROWN_VALUE: return ORBITAL_CROWN;
			case LASER_CATHETER_VALUE: return LASER_CATHETER;
			case IMAGING_CATHETER_VALUE: return IMAGING_CATHETER;
			case ASPIRATION_CATHETER_VALUE: return ASPIRATION_CATHETER;
			case SNARE_VALUE: return SNARE;
			case COIL_VALUE: return COIL;
			case DRAIN_CATHETER_VALUE: return DRAIN_CATHETER;
			case HAEMOSTASIS_VALVE_VALUE: return HAEMOSTASIS_VALVE;
			case DILATOR_VALUE: return DILATOR;
			case OTHER_VALUE: return OTHER;
		}
		return null;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final int value;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String name;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String literal;

	/**
	 * Only this class can construct instances.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private DeviceKind(int value, String name, String literal)
	{
		this.value = value;
		this.name = name;
		this.literal = literal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getValue()
	{
	  return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName()
	{
	  return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLiteral()
	{
	  return literal;
	}

	/**
	 * Returns the literal value of the enumerator, which is its string representation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString()
	{
		return literal;
	}

} //DeviceKind
