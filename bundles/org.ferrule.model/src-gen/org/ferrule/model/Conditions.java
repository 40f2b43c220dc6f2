/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Conditions</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The conditions under which the inner devices pass.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Conditions#getDirection <em>Direction</em>}</li>
 *   <li>{@link org.ferrule.model.Conditions#getWire <em>Wire</em>}</li>
 *   <li>{@link org.ferrule.model.Conditions#getReach <em>Reach</em>}</li>
 *   <li>{@link org.ferrule.model.Conditions#getInside <em>Inside</em>}</li>
 *   <li>{@link org.ferrule.model.Conditions#getThrough <em>Through</em>}</li>
 *   <li>{@link org.ferrule.model.Conditions#getBends <em>Bends</em>}</li>
 *   <li>{@link org.ferrule.model.Conditions#isAfterInflation <em>After Inflation</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getConditions()
 * @model
 * @generated
 */
public interface Conditions extends Element
{
	/**
	 * Returns the value of the '<em><b>Direction</b></em>' attribute.
	 * The default value is <code>"tipFirst"</code>.
	 * The literals are from the enumeration {@link org.ferrule.model.Direction}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the device goes tip first, or is loaded over the tail of the wire in place.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Direction</em>' attribute.
	 * @see org.ferrule.model.Direction
	 * @see #isSetDirection()
	 * @see #unsetDirection()
	 * @see #setDirection(Direction)
	 * @see org.ferrule.model.ModelPackage#getConditions_Direction()
	 * @model default="tipFirst" unsettable="true"
	 * @generated
	 */
	Direction getDirection();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Conditions#getDirection <em>Direction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Direction</em>' attribute.
	 * @see org.ferrule.model.Direction
	 * @see #isSetDirection()
	 * @see #unsetDirection()
	 * @see #getDirection()
	 * @generated
	 */
	void setDirection(Direction value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Conditions#getDirection <em>Direction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetDirection()
	 * @see #getDirection()
	 * @see #setDirection(Direction)
	 * @generated
	 */
	void unsetDirection();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Conditions#getDirection <em>Direction</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Direction</em>' attribute is set.
	 * @see #unsetDirection()
	 * @see #getDirection()
	 * @see #setDirection(Direction)
	 * @generated
	 */
	boolean isSetDirection();

	/**
	 * Returns the value of the '<em><b>Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of the wire in place.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Wire</em>' attribute.
	 * @see #setWire(String)
	 * @see org.ferrule.model.ModelPackage#getConditions_Wire()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Wire in place'"
	 * @generated
	 */
	String getWire();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Conditions#getWire <em>Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Wire</em>' attribute.
	 * @see #getWire()
	 * @generated
	 */
	void setWire(String value);

	/**
	 * Returns the value of the '<em><b>Reach</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far beyond the outer device's distal end the inner device goes; from hub to hub when not given (mm, cm or in).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reach</em>' attribute.
	 * @see #setReach(Dimension)
	 * @see org.ferrule.model.ModelPackage#getConditions_Reach()
	 * @model dataType="org.ferrule.model.Dimension"
	 *        annotation="https://ferrule.invalid/annotation/1 figure='LENGTH' label='Reach beyond the outer device'"
	 * @generated
	 */
	Dimension getReach();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Conditions#getReach <em>Reach</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reach</em>' attribute.
	 * @see #getReach()
	 * @generated
	 */
	void setReach(Dimension value);

	/**
	 * Returns the value of the '<em><b>Inside</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.Occupant}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The devices that lie in the outer device already and stay there.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Inside</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getConditions_Inside()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Already inside'"
	 * @generated
	 */
	EList<Occupant> getInside();

	/**
	 * Returns the value of the '<em><b>Through</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The guide extension in place, through which the device goes.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Through</em>' containment reference.
	 * @see #setThrough(ThroughExtension)
	 * @see org.ferrule.model.ModelPackage#getConditions_Through()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Through a guide extension'"
	 * @generated
	 */
	ThroughExtension getThrough();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Conditions#getThrough <em>Through</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Through</em>' containment reference.
	 * @see #getThrough()
	 * @generated
	 */
	void setThrough(ThroughExtension value);

	/**
	 * Returns the value of the '<em><b>Bends</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.Bend}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The bends on the way, beside those of the vessel path.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bends</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getConditions_Bends()
	 * @model containment="true"
	 * @generated
	 */
	EList<Bend> getBends();

	/**
	 * Returns the value of the '<em><b>After Inflation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the device goes in with its outline after use, as a balloon that was inflated before.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>After Inflation</em>' attribute.
	 * @see #setAfterInflation(boolean)
	 * @see org.ferrule.model.ModelPackage#getConditions_AfterInflation()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Goes in after use'"
	 * @generated
	 */
	boolean isAfterInflation();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Conditions#isAfterInflation <em>After Inflation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>After Inflation</em>' attribute.
	 * @see #isAfterInflation()
	 * @generated
	 */
	void setAfterInflation(boolean value);

} // Conditions
