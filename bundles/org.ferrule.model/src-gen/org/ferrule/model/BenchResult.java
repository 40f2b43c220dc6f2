/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Bench Result</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What was tried on a bench.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.BenchResult#getOuter <em>Outer</em>}</li>
 *   <li>{@link org.ferrule.model.BenchResult#getLumen <em>Lumen</em>}</li>
 *   <li>{@link org.ferrule.model.BenchResult#getInner <em>Inner</em>}</li>
 *   <li>{@link org.ferrule.model.BenchResult#getWire <em>Wire</em>}</li>
 *   <li>{@link org.ferrule.model.BenchResult#getResult <em>Result</em>}</li>
 *   <li>{@link org.ferrule.model.BenchResult#getCovers <em>Covers</em>}</li>
 *   <li>{@link org.ferrule.model.BenchResult#getSamples <em>Samples</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getBenchResult()
 * @model
 * @generated
 */
public interface BenchResult extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Outer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of the outer device.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Outer</em>' attribute.
	 * @see #setOuter(String)
	 * @see org.ferrule.model.ModelPackage#getBenchResult_Outer()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 refers='Device' label='Outer device'"
	 * @generated
	 */
	String getOuter();

	/**
	 * Sets the value of the '{@link org.ferrule.model.BenchResult#getOuter <em>Outer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Outer</em>' attribute.
	 * @see #getOuter()
	 * @generated
	 */
	void setOuter(String value);

	/**
	 * Returns the value of the '<em><b>Lumen</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name of the outer device's lumen, where it has several.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lumen</em>' attribute.
	 * @see #setLumen(String)
	 * @see org.ferrule.model.ModelPackage#getBenchResult_Lumen()
	 * @model annotation="https://ferrule.invalid/annotation/1 refers='Lumen' label='Lumen of the outer device'"
	 * @generated
	 */
	String getLumen();

	/**
	 * Sets the value of the '{@link org.ferrule.model.BenchResult#getLumen <em>Lumen</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lumen</em>' attribute.
	 * @see #getLumen()
	 * @generated
	 */
	void setLumen(String value);

	/**
	 * Returns the value of the '<em><b>Inner</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of the inner device.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Inner</em>' attribute.
	 * @see #setInner(String)
	 * @see org.ferrule.model.ModelPackage#getBenchResult_Inner()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 refers='Device' label='Inner device'"
	 * @generated
	 */
	String getInner();

	/**
	 * Sets the value of the '{@link org.ferrule.model.BenchResult#getInner <em>Inner</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Inner</em>' attribute.
	 * @see #getInner()
	 * @generated
	 */
	void setInner(String value);

	/**
	 * Returns the value of the '<em><b>Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of the wire that was in place.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Wire</em>' attribute.
	 * @see #setWire(String)
	 * @see org.ferrule.model.ModelPackage#getBenchResult_Wire()
	 * @model annotation="https://ferrule.invalid/annotation/1 refers='Device' label='Wire in place'"
	 * @generated
	 */
	String getWire();

	/**
	 * Sets the value of the '{@link org.ferrule.model.BenchResult#getWire <em>Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Wire</em>' attribute.
	 * @see #getWire()
	 * @generated
	 */
	void setWire(String value);

	/**
	 * Returns the value of the '<em><b>Result</b></em>' attribute.
	 * The literals are from the enumeration {@link org.ferrule.model.BenchOutcome}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What happened.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Result</em>' attribute.
	 * @see org.ferrule.model.BenchOutcome
	 * @see #isSetResult()
	 * @see #unsetResult()
	 * @see #setResult(BenchOutcome)
	 * @see org.ferrule.model.ModelPackage#getBenchResult_Result()
	 * @model unsettable="true" required="true"
	 * @generated
	 */
	BenchOutcome getResult();

	/**
	 * Sets the value of the '{@link org.ferrule.model.BenchResult#getResult <em>Result</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Result</em>' attribute.
	 * @see org.ferrule.model.BenchOutcome
	 * @see #isSetResult()
	 * @see #unsetResult()
	 * @see #getResult()
	 * @generated
	 */
	void setResult(BenchOutcome value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.BenchResult#getResult <em>Result</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetResult()
	 * @see #getResult()
	 * @see #setResult(BenchOutcome)
	 * @generated
	 */
	void unsetResult();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.BenchResult#getResult <em>Result</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Result</em>' attribute is set.
	 * @see #unsetResult()
	 * @see #getResult()
	 * @see #setResult(BenchOutcome)
	 * @generated
	 */
	boolean isSetResult();

	/**
	 * Returns the value of the '<em><b>Covers</b></em>' attribute list.
	 * The list contents are of type {@link org.ferrule.model.Phase}.
	 * The literals are from the enumeration {@link org.ferrule.model.Phase}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the way in, the way out or both were tried; the way in when nothing is said.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Covers</em>' attribute list.
	 * @see org.ferrule.model.Phase
	 * @see org.ferrule.model.ModelPackage#getBenchResult_Covers()
	 * @model unique="false"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Covers the way'"
	 * @generated
	 */
	EList<Phase> getCovers();

	/**
	 * Returns the value of the '<em><b>Samples</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many samples were tried.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Samples</em>' attribute.
	 * @see #setSamples(Integer)
	 * @see org.ferrule.model.ModelPackage#getBenchResult_Samples()
	 * @model annotation="https://ferrule.invalid/annotation/1 least='1' label='Number of samples'"
	 * @generated
	 */
	Integer getSamples();

	/**
	 * Sets the value of the '{@link org.ferrule.model.BenchResult#getSamples <em>Samples</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Samples</em>' attribute.
	 * @see #getSamples()
	 * @generated
	 */
	void setSamples(Integer value);

} // BenchResult
