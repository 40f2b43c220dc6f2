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
 * A representation of the literals of the enumeration '<em><b>Cutter Type</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What sort of cutter it is.
 * <!-- end-model-doc -->
 * @see org.ferrule.model.ModelPackage#getCutterType()
 * @model
 * @generated
 */
public enum CutterType implements Enumerator
{
	/**
	 * The '<em><b>Burr</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BURR_VALUE
	 * @generated
	 * @ordered
	 */
	BURR(0, "burr", "burr"),

	/**
	 * The '<em><b>Crown</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CROWN_VALUE
	 * @generated
	 * @ordered
	 */
	CROWN(1, "crown", "crown"),

	/**
	 * The '<em><b>Laser Tip</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LASER_TIP_VALUE
	 * @generated
	 * @ordered
	 */
	LASER_TIP(2, "laserTip", "laser tip"),

	/**
	 * The '<em><b>Scoring Element</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SCORING_ELEMENT_VALUE
	 * @generated
	 * @ordered
	 */
	SCORING_ELEMENT(3, "scoringElement", "scoring element"),

	/**
	 * The '<em><b>Blade</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BLADE_VALUE
	 * @generated
	 * @ordered
	 */
	BLADE(4, "blade", "blade");

	/**
	 * The '<em><b>Burr</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BURR
	 * @model name="burr"
	 * @generated
	 * @ordered
	 */
	public static final int BURR_VALUE = 0;

	/**
	 * The '<em><b>Crown</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #CROWN
	 * @model name="crown"
	 * @generated
	 * @ordered
	 */
	public static final int CROWN_VALUE = 1;

	/**
	 * The '<em><b>Laser Tip</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #LASER_TIP
	 * @model name="laserTip" literal="laser tip"
	 * @generated
	 * @ordered
	 */
	public static final int LASER_TIP_VALUE = 2;

	/**
	 * The '<em><b>Scoring Element</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #SCORING_ELEMENT
	 * @model name="scoringElement" literal="scoring element"
	 * @generated
	 * @ordered
	 */
	public static final int SCORING_ELEMENT_VALUE = 3;

	/**
	 * The '<em><b>Blade</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BLADE
	 * @model name="blade"
	 * @generated
	 * @ordered
	 */
	public static final int BLADE_VALUE = 4;

	/**
	 * An array of all the '<em><b>Cutter Type</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final CutterType[] VALUES_ARRAY =
		new CutterType[]
		{
			BURR,
			CROWN,
			LASER_TIP,
			SCORING_ELEMENT,
			BLADE,
		};

	/**
	 * A public read-only list of all the '<em><b>Cutter Type</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<CutterType> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Cutter Type</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static CutterType get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			CutterType result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Cutter Type</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static CutterType getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			CutterType result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Cutter Type</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static CutterType get(int value)
	{
		switch (value)
		{
			case BURR_VALUE: return BURR;
			case CROWN_VALUE: return CROWN;
			case LASER_TIP_VALUE: return LASER_TIP;
			case SCORING_ELEMENT_VALUE: return SCORING_ELEMENT;
			case BLADE_VALUE: return BLADE;
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
	private CutterType(int value, String name, String literal)
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

} //CutterType
