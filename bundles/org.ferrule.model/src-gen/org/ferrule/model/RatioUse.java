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
 * A representation of the literals of the enumeration '<em><b>Ratio Use</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What is compared with the diameter of a vessel.
 * <!-- end-model-doc -->
 * @see org.ferrule.model.ModelPackage#getRatioUse()
 * @model
 * @generated
 */
public enum RatioUse implements Enumerator
{
	/**
	 * The '<em><b>Balloon To Vessel</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BALLOON_TO_VESSEL_VALUE
	 * @generated
	 * @ordered
	 */
	BALLOON_TO_VESSEL(0, "balloonToVessel", "balloon to vessel"),

	/**
	 * The '<em><b>Burr To Vessel</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BURR_TO_VESSEL_VALUE
	 * @generated
	 * @ordered
	 */
	BURR_TO_VESSEL(1, "burrToVessel", "burr to vessel");

	/**
	 * The '<em><b>Balloon To Vessel</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BALLOON_TO_VESSEL
	 * @model name="balloonToVessel" literal="balloon to vessel"
	 * @generated
	 * @ordered
	 */
	public static final int BALLOON_TO_VESSEL_VALUE = 0;

	/**
	 * The '<em><b>Burr To Vessel</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BURR_TO_VESSEL
	 * @model name="burrToVessel" literal="burr to vessel"
	 * @generated
	 * @ordered
	 */
	public static final int BURR_TO_VESSEL_VALUE = 1;

	/**
	 * An array of all the '<em><b>Ratio Use</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final RatioUse[] VALUES_ARRAY =
		new RatioUse[]
		{
			BALLOON_TO_VESSEL,
			BURR_TO_VESSEL,
		};

	/**
	 * A public read-only list of all the '<em><b>Ratio Use</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<RatioUse> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Ratio Use</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RatioUse get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			RatioUse result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Ratio Use</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RatioUse getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			RatioUse result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Ratio Use</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RatioUse get(int value)
	{
		switch (value)
		{
			case BALLOON_TO_VESSEL_VALUE: return BALLOON_TO_VESSEL;
			case BURR_TO_VESSEL_VALUE: return BURR_TO_VESSEL;
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
	private RatioUse(int value, String name, String literal)
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

} //RatioUse
