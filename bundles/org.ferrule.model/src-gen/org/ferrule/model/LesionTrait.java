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
 * A representation of the literals of the enumeration '<em><b>Lesion Trait</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What someone sees of a lesion that no figure tells, as published classes count it.
 * <!-- end-model-doc -->
 * @see org.ferrule.model.ModelPackage#getLesionTrait()
 * @model
 * @generated
 */
public enum LesionTrait implements Enumerator
{
	/**
	 * The '<em><b>Eccentric</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ECCENTRIC_VALUE
	 * @generated
	 * @ordered
	 */
	ECCENTRIC(0, "eccentric", "eccentric"),

	/**
	 * The '<em><b>Irregular</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #IRREGULAR_VALUE
	 * @generated
	 * @ordered
	 */
	IRREGULAR(1, "irregular", "irregular"),

	/**
	 * The '<em><b>Ostial</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OSTIAL_VALUE
	 * @generated
	 * @ordered
	 */
	OSTIAL(2, "ostial", "ostial"),

	/**
	 * The '<em><b>Bifurcation</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BIFURCATION_VALUE
	 * @generated
	 * @ordered
	 */
	BIFURCATION(3, "bifurcation", "bifurcation"),

	/**
	 * The '<em><b>Thrombus</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #THROMBUS_VALUE
	 * @generated
	 * @ordered
	 */
	THROMBUS(4, "thrombus", "thrombus"),

	/**
	 * The '<em><b>Moderate Tortuosity</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MODERATE_TORTUOSITY_VALUE
	 * @generated
	 * @ordered
	 */
	MODERATE_TORTUOSITY(5, "moderateTortuosity", "moderate tortuosity"),

	/**
	 * The '<em><b>Excessive Tortuosity</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #EXCESSIVE_TORTUOSITY_VALUE
	 * @generated
	 * @ordered
	 */
	EXCESSIVE_TORTUOSITY(6, "excessiveTortuosity", "excessive tortuosity"),

	/**
	 * The '<em><b>Branch At Risk</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BRANCH_AT_RISK_VALUE
	 * @generated
	 * @ordered
	 */
	BRANCH_AT_RISK(7, "branchAtRisk", "branch at risk"),

	/**
	 * The '<em><b>Degenerated Graft</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DEGENERATED_GRAFT_VALUE
	 * @generated
	 * @ordered
	 */
	DEGENERATED_GRAFT(8, "degeneratedGraft", "degenerated graft");

	/**
	 * The '<em><b>Eccentric</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #ECCENTRIC
	 * @model name="eccentric"
	 * @generated
	 * @ordered
	 */
	public static final int ECCENTRIC_VALUE = 0;

	/**
	 * The '<em><b>Irregular</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #IRREGULAR
	 * @model name="irregular"
	 * @generated
	 * @ordered
	 */
	public static final int IRREGULAR_VALUE = 1;

	/**
	 * The '<em><b>Ostial</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #OSTIAL
	 * @model name="ostial"
	 * @generated
	 * @ordered
	 */
	public static final int OSTIAL_VALUE = 2;

	/**
	 * The '<em><b>Bifurcation</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BIFURCATION
	 * @model name="bifurcation"
	 * @generated
	 * @ordered
	 */
	public static final int BIFURCATION_VALUE = 3;

	/**
	 * The '<em><b>Thrombus</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #THROMBUS
	 * @model name="thrombus"
	 * @generated
	 * @ordered
	 */
	public static final int THROMBUS_VALUE = 4;

	/**
	 * The '<em><b>Moderate Tortuosity</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #MODERATE_TORTUOSITY
	 * @model name="moderateTortuosity" literal="moderate tortuosity"
	 * @generated
	 * @ordered
	 */
	public static final int MODERATE_TORTUOSITY_VALUE = 5;

	/**
	 * The '<em><b>Excessive Tortuosity</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #EXCESSIVE_TORTUOSITY
	 * @model name="excessiveTortuosity" literal="excessive tortuosity"
	 * @generated
	 * @ordered
	 */
	public static final int EXCESSIVE_TORTUOSITY_VALUE = 6;

	/**
	 * The '<em><b>Branch At Risk</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #BRANCH_AT_RISK
	 * @model name="branchAtRisk" literal="branch at risk"
	 * @generated
	 * @ordered
	 */
	public static final int BRANCH_AT_RISK_VALUE = 7;

	/**
	 * The '<em><b>Degenerated Graft</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #DEGENERATED_GRAFT
	 * @model name="degeneratedGraft" literal="degenerated graft"
	 * @generated
	 * @ordered
	 */
	public static final int DEGENERATED_GRAFT_VALUE = 8;

	/**
	 * An array of all the '<em><b>Lesion Trait</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final LesionTrait[] VALUES_ARRAY =
		new LesionTrait[]
		{
			ECCENTRIC,
			IRREGULAR,
			OSTIAL,
			BIFURCATION,
			THROMBUS,
			MODERATE_TORTUOSITY,
			EXCESSIVE_TORTUOSITY,
			BRANCH_AT_RISK,
			DEGENERATED_GRAFT,
		};

	/**
	 * A public read-only list of all the '<em><b>Lesion Trait</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<LesionTrait> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Lesion Trait</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static LesionTrait get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			LesionTrait result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Lesion Trait</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static LesionTrait getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			LesionTrait result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Lesion Trait</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static LesionTrait get(int value)
	{
		switch (value)
		{
			case ECCENTRIC_VALUE: return ECCENTRIC;
			case IRREGULAR_VALUE: return IRREGULAR;
			case OSTIAL_VALUE: return OSTIAL;
			case BIFURCATION_VALUE: return BIFURCATION;
			case THROMBUS_VALUE: return THROMBUS;
			case MODERATE_TORTUOSITY_VALUE: return MODERATE_TORTUOSITY;
			case EXCESSIVE_TORTUOSITY_VALUE: return EXCESSIVE_TORTUOSITY;
			case BRANCH_AT_RISK_VALUE: return BRANCH_AT_RISK;
			case DEGENERATED_GRAFT_VALUE: return DEGENERATED_GRAFT;
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
	private LesionTrait(int value, String name, String literal)
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

} //LesionTrait
